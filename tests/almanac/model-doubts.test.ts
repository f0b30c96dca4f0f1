import { describe, expect, it } from 'vitest';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { entryFile, type Files, inFolder, soundFolder } from '../entries/content-folder.ts';

const plover = 'entries/haul/plover/entry.md';

/** What is found in the sound folder with these files laid over it, without the place of the file. */
async function told(files: Files): Promise<string[]> {
  const { problems } = await inFolder({ ...soundFolder, ...files }, (content) =>
    readAlmanac({ content, now: '2027-06-01T12:00:00Z' }),
  );
  return problems.map(
    ({ severity, code, line, column, message }) => `${line}:${column} ${severity} ${code}: ${message}`,
  );
}

/** The sound entry with its lines in other words: line 5 is the wing, 6 the mass, 7 the motors. */
function model(words: Readonly<Record<string, string>>, ...more: string[]): Files {
  let text = entryFile('Plover', ...more);
  for (const [before, after] of Object.entries(words)) text = text.replace(before, after);
  return { [plover]: text };
}

const wing = 'wing: { span: 1.2 m }';
const chord = 'wing: { span: 1.2 m, chord: 15 cm }';

describe('mass and wing', () => {
  it('that give an improbable loading are a warning with both numbers and the unit that was probably meant', async () => {
    // By hand: 118 oz are 3345 g, 1.2 m × 0.15 m are 18 dm²: 186 g/dm². 0.03 and 60 N/m² over 9.80665 m/s².
    expect(await told(model({ [wing]: chord, 'airframe: 100 g': 'flying: 118 oz' }))).toEqual([
      '6:17 warning wing-loading-improbable: `mass.flying` is "118 oz" on a wing of 18 dm², a wing loading of 186 g/dm², which is improbable: models on rubber carry from 0.0306 g/dm² to 61.2 g/dm². Did you mean "118 g"?',
    ]);
  });

  it('may be those of any model that flies', async () => {
    expect(await told(model({ [wing]: chord, 'airframe: 100 g': 'flying: 118 g' }))).toEqual([]);
    expect(await told(model({ 'airframe: 100 g': 'flying: 118 oz' }))).toEqual([]);
  });
});

describe('the balance', () => {
  const tailplane = 'tailplane: { span: 40 cm, area: 4 dm2, arm: 60 cm }';

  it('behind the wing is a warning with both numbers', async () => {
    // By hand: 92 cm over a chord of 15 cm.
    expect(await told(model({ [wing]: chord }, 'balance: 92 cm'))).toEqual([
      '8:10 warning balance-beside-wing: `balance` is "92 cm", 613 % of the mean aerodynamic chord of 150 mm, behind the wing. Measure from the leading edge at the centre line, and look at the unit.',
    ]);
    expect(await told(model({ [wing]: chord }, 'balance: -2 cm'))).toHaveLength(1);
    expect(await told(model({ [wing]: chord }, 'balance: -2 cm', 'layout: canard'))).toEqual([]);
  });

  it('behind the neutral point is a note with both numbers', async () => {
    // By hand (Helmbold's slopes): aspect ratios 8 and 4, V = 4·60/(18·15) = 0.889, slopes 4.91 and 3.88, downwash slope
    // 0.39, so κ = 0.482; 0.25 + 0.889·0.482/(1 + 0.482·0.222) = 0.637.
    expect(await told(model({ [wing]: chord }, 'balance: 12 cm', tailplane))).toEqual([
      '8:10 note balance-behind-neutral-point: `balance` is "12 cm", 80 % of the mean aerodynamic chord of 150 mm, behind the neutral point, which the wing and the tailplane put at 64 %: a well-trimmed model balances ahead of it. Look at the balance and at the tailplane\'s area and arm again.',
    ]);
    expect(await told(model({ [wing]: chord }, 'balance: 8 cm', tailplane))).toEqual([]);
  });

  it('is asked about in the setup that wrote it', async () => {
    const [problem, ...more] = await told(
      model({ [wing]: chord }, 'balance: 8 cm', 'setups: [{ id: b, from: 2027-05-10, balance: 80 cm }]'),
    );
    expect(more).toEqual([]);
    expect(problem).toContain('9:46 warning balance-beside-wing: `balance` in setup b is "80 cm"');
  });
});

describe('a test glide', () => {
  const thrown = (distance: string) =>
    told(
      model(
        { [wing]: chord, 'airframe: 100 g': 'flying: 110 g' },
        `glides: [{ height: 2.0 m, distance: ${distance}, behaviour: [clean] }]`,
      ),
    );

  it('beyond an ideal wing is a note with both numbers', async () => {
    const [problem, ...more] = await thrown('90 m');
    expect(more).toEqual([]);
    expect(problem).toMatch(
      /^8:37 note glide-beyond-ideal: `distance` in glide 1 is "90 m" from a height of "2.0 m", a glide ratio of 45; an ideal wing of these measures has 2\d(\.\d)?\. It needs rising air or a wind from behind, or another look at the numbers\.$/,
    );
  });

  it('may be good', async () => {
    expect(await thrown('30 m')).toEqual([]);
  });
});

describe('the best time', () => {
  const rubber =
    'motors: [{ count: 2, skein: { length: 30 cm, mass: 5 g, strip: { width: 3 mm, thickness: 1 mm } } }]';
  const flown = (...times: string[]) =>
    told(
      model(
        { [wing]: chord, 'motors: [{ count: 2 }]': rubber },
        'flights:',
        ...times.map((time, at) => `  - { number: ${at + 1}, date: 2027-05-0${at + 1}, time: ${time} }`),
      ),
    );

  it('above the upper bound is a note that works out both times', async () => {
    const [problem, ...more] = await flown('12 s', '900 s');
    expect(more).toEqual([]);
    expect(problem).toMatch(
      /^10:15 note time-above-ceiling: Flight 2 lasted 900\.0 s\. For this flight in still air the model's own figures give \d+ s ± \d+ s, and the best of everything gives \d+ s: it needs rising air, or another look at the numbers\.$/,
    );
  });

  it('far above the prediction is a note too', async () => {
    const [problem, ...more] = await flown('600 s');
    expect(more).toEqual([]);
    expect(problem).toMatch(
      /^9:15 note time-above-prediction: Flight 1 lasted 600\.0 s\. For this flight in still air the model's own figures give \d+ s ± \d+ s, and the best of everything gives \d+ s: it needs rising air, or another look at the numbers\.$/,
    );
  });

  it('as the figures have it is nothing to speak of', async () => {
    expect(await flown('30 s')).toEqual([]);
  });
});

describe('the strip of a skein', () => {
  const batch = '---\nlabel: Fen A\nstrip: { width: 3.2 mm, thickness: 1.1 mm }\n---\n';
  const cut = (strip: string) =>
    told({
      'rubber/fen-a.md': batch,
      ...model({
        '{ count: 2 }': `{ count: 2, skein: { batch: fen-a, strip: ${strip}, strands: 8, length: 30 cm } }`,
      }),
    });

  it('is asked about where it is not that of its batch', async () => {
    expect(await cut('{ width: 6.4 mm, thickness: 1.1 mm }')).toEqual([
      '7:61 warning strip-differs: `skein.strip.width` in motor 1 is "6.4 mm", but the strip of batch fen-a is "3.2 mm": 50 % apart. Measure again, leave `strip` out where it is that of the batch, or name the batch it was cut from.',
    ]);
  });

  it('may differ a little', async () => {
    expect(await cut('{ width: 1/8 in, thickness: 1.05 mm }')).toEqual([]);
  });
});
