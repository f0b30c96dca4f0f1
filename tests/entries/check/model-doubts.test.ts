import { describe, expect, it } from 'vitest';
import { allTold, entryOf, smallestEntry } from '../written.ts';

// What is asked about is content format 1, the tolerances common practice without source; the wording is this project's
// own. The smallest entry fills lines 2 to 7, its motors the last of them.

const withMotors = (motors: string, ...more: string[]) =>
  allTold(
    entryOf([smallestEntry.replace('motors: [{ count: 2 }]', `motors: ${motors}`), ...more].join('\n')),
  );

describe('the places of motors', () => {
  it('are no more than the motors: each distance is two of them', () => {
    expect(withMotors('[{ count: 2, at: [20 cm, 40 cm, 0] }]')).toEqual([
      '7:26 more-places-than-motors: `at` in motor 1 is "20 cm, 40 cm, 0", which makes 5 places, each distance on both sides of the centre line, but `count` is 2. Write each distance once for its two sides, give the `side` where the motors sit on one only, or correct the `count`.',
    ]);
    expect(withMotors('[{ count: 2, side: left, at: [20 cm, 40 cm, 60 cm] }]')).toEqual([
      '7:38 more-places-than-motors: `at` in motor 1 is "20 cm, 40 cm, 60 cm", which makes 3 places, but `count` is 2. Write each distance once for its two sides, give the `side` where the motors sit on one only, or correct the `count`.',
    ]);
  });

  it('are asked about where they are fewer, and the motors cannot share them evenly', () => {
    expect(withMotors('[{ count: 3, at: 20 cm }]')).toEqual([
      '7:26 fewer-places-than-motors: `at` in motor 1 is "20 cm", which makes 2 places, each distance on both sides of the centre line, but `count` is 3. Write every distance, or correct the `count`.',
    ]);
  });

  it('are as many as the motors', () => {
    expect(withMotors('[{ count: 2, at: 20 cm }, { count: 1, at: 0 }, { count: 3 }]')).toEqual([]);
    expect(withMotors('[{ count: 4, at: 20 cm }, { count: 2, side: left, at: 9 in }]')).toEqual([]);
    expect(withMotors('[{ count: 3, at: [0, 20 cm] }, { count: 1, side: left, at: 9 in }]')).toEqual([]);
  });
});

describe('the parts of a model', () => {
  const weighing = (mass: string, ...more: string[]) =>
    allTold(entryOf([smallestEntry.replace('{ airframe: 100 g }', mass), ...more].join('\n')));

  it('weigh no more than the airframe', () => {
    expect(weighing('{ airframe: 100 g, parts: { wing: 70 g, tail: 41 g } }')).toEqual([
      '6:26 parts-heavier-than-whole: `mass.parts` weigh 111 g together, more than the "100 g" of `airframe`. Weigh again and correct the wrong one.\n(6:19 the whole stands here)',
    ]);
    expect(weighing('{ flying: 100 g, parts: { wing: 70 g, rubber: 41 g } }')).toHaveLength(1);
    expect(weighing('{ airframe: 100 g, parts: { wing: 70 g, tail: 30 g } }')).toEqual([]);
  });

  it('are laid over those of the setup before', () => {
    const setup = 'setups: [{ id: b, from: 2027-06-10, mass: { parts: { tail: 50 g } } }]';
    const [problem, ...more] = weighing('{ airframe: 100 g, parts: { wing: 70 g, tail: 30 g } }', setup);
    expect(more).toEqual([]);
    expect(problem).toContain('8:45 parts-heavier-than-whole: `mass.parts` in setup b weigh 120 g together');
  });
});

describe('the strands of a skein', () => {
  const of = (strands: number) =>
    withMotors(`[{ count: 2, skein: { strands: ${strands}, length: 30 cm, mass: 5 g } }]`);

  it('are asked about where there is an odd number of them', () => {
    expect(of(7)).toEqual([
      '7:40 odd-strands: `skein.strands` in motor 1 is 7, and a skein made of a loop has an even number: 6 or 8. Count them again; leave it where an odd one was meant.',
    ]);
  });

  it('may be even, or one', () => {
    expect([...of(8), ...of(1)]).toEqual([]);
  });
});

describe('several tests of break turns', () => {
  const of = (turns: string) => withMotors(`[{ count: 2, break-turns: ${turns} }]`);

  it('are asked about where one lies far from the others', () => {
    expect(of('[101, 998, 1042]')).toEqual([
      '7:36 break-turns-apart: item 1 of `break-turns` in motor 1 is "101" beside "998", "1042": skeins like each other seldom break more than a factor of 1.6 apart. Correct it if it is a slip, and leave out a skein that was damaged or made otherwise.',
    ]);
    expect(of('[998, 1042, 10100]')[0]).toContain('is "10100" beside "998", "1042"');
  });

  it('may scatter', () => {
    expect([...of('[801, 998, 1042]'), ...of('990')]).toEqual([]);
  });
});

describe('the motor run of a flight', () => {
  const flown = (fields: string) =>
    allTold(entryOf(`${smallestEntry}\nflights:\n  - { number: 3, date: 2027-05-09, ${fields} }`));

  it('is no longer than the flight', () => {
    expect(flown('time: 38 s, motor-run: 40 s')).toEqual([
      '9:59 motor-run-beyond-flight: `motor-run` in flight 3 is "40 s", but `time` is "38 s": the motors ran longer than the model flew. Correct the wrong one.\n(9:42 the time stands here)',
    ]);
    expect(flown('time: 41 s, motor-run: 40 s')).toEqual([]);
  });

  it('may show that minutes were written as seconds', () => {
    expect(flown('watches: [1.05 s, 1.06 s], motor-run: 40 s')[0]).toContain(
      '`motor-run` in flight 3 is "40 s", but `watches` is "1.06 s": the motors ran longer than the model flew. Did you mean "1:06", minutes and seconds, as the time?',
    );
  });
});
