import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { stretchTest } from '../figures/example-design.ts';
import { almanacOf, challengeRecord, entryRecord, figure, flight, quantity } from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

// Invented batches and aircraft; what the pages must say of them is told by hand.

function batchOf(
  id: string,
  tests: Partial<Almanac['batches'][number]['batch']>,
): Almanac['batches'][number] {
  const [plain] = almanacOf([]).batches;
  if (plain === undefined) throw new Error('the fixture has a batch');
  return { ...plain, batch: { ...plain.batch, id, label: `Batch ${id}`, ...tests } };
}

describe('the pages of rubber and trim', () => {
  let site: BuiltPages;

  beforeAll(async () => {
    const tern = entryRecord('tern', 31);
    const spring = challengeRecord(
      [31, 20],
      [
        {
          ...tern,
          entry: {
            ...tern.entry,
            glides: [
              {
                date: '2031-05-01',
                height: null,
                distance: null,
                time: quantity('time', 6, 0.1, '6.0 s'),
                wind: null,
                direction: null,
                balance: quantity('length', 0.075, 0.002, '75 mm'),
                behaviour: ['stalled'],
                note: null,
              },
            ],
            flights: [flight(1, 31)],
          },
          noseBallasts: [
            {
              margin: 0.1,
              shift: figure('balance-shift', 'm', -0.0104, 0.0021),
              ballast: figure('nose-ballast', 'kg', -0.0126, 0.0031),
            },
            {
              margin: 0.15,
              shift: figure('balance-shift', 'm', 0.004, 0.0021),
              ballast: figure('nose-ballast', 'kg', 0.0054, 0.0031),
            },
          ],
        },
        {
          ...entryRecord('wren', 20),
          noseBallasts: [0.05, 0.1].map((margin) => ({
            margin,
            shift: { id: 'balance-shift', unit: 'm' as const, absent: 'needs the balance' },
            ballast: { id: 'nose-ballast', unit: 'kg' as const, absent: 'needs the balance' },
          })),
        },
      ],
    );
    const other = challengeRecord([12], [entryRecord('heron', 12)]);
    const autumn = { ...other, challenge: { ...other.challenge, id: 'autumn', title: 'Autumn Trial 2031' } };
    site = await buildPages(
      almanacOf([spring, autumn], {
        batches: [
          batchOf('first-cut', {
            stretchTests: [
              stretchTest({ file: 'cut-1.csv', broke: true, cycle: 3 }),
              stretchTest({ file: 'cut-2.csv', points: null }),
            ],
            torqueTests: [
              {
                file: 'wound.csv',
                strands: 6,
                length: quantity('length', 0.3, 0.003, '300 mm'),
                mass: quantity('mass', 0.0059, 0.0001, '5.9 g'),
                cycle: 1,
                points: [
                  { turns: 200, torque: 0.03 },
                  { turns: 0, torque: 0 },
                ],
                calibration: 0.03,
              },
            ],
          }),
          batchOf('untried', {}),
        ],
      }),
    );
  });

  afterAll(() => site.remove());

  it('name every test and draw those whose log could be read', async () => {
    const page = await site.page('rubber/first-cut/');
    for (const file of ['cut-1.csv', 'cut-2.csv', 'wound.csv']) expect(page).toContain(`>${file}</th>`);
    expect(page.match(/<svg class="chart"/g)).toHaveLength(2);
    expect(page).toContain('<title id="stretch-1-title">cut-1.csv: force against stretch</title>');
    expect(page).toContain('<title id="torque-1-title">wound.csv: torque against turns</title>');
    expect(page).toContain('log could not be read');
  });

  it('put the numbers of a curve beside it', async () => {
    const page = await site.page('rubber/first-cut/');
    // By hand: at 5 times its length 10 N out and 9.5 N back, of 3.3 g/m: 3.03 and 2.88.
    expect(page.replaceAll(/\s+/g, ' ')).toMatch(
      /5\.00 ?<\/th>\s*<td class="number"> ?3\.03 ?<\/td>\s*<td class="number"> ?2\.88 ?<\/td>/,
    );
  });

  it('list every aircraft of every challenge that flies on a batch', async () => {
    const page = await site.page('rubber/first-cut/');
    for (const place of ['spring/tern', 'spring/wren', 'autumn/heron'])
      expect(page).toContain(`href="${base}entries/${place}/"`);
  });

  it('have no chart where there was no test', async () => {
    const page = await site.page('rubber/untried/');
    expect(page).toContain('No test has been entered.');
    expect(page).toContain('No entered aircraft names this batch.');
    expect(page).not.toContain('<svg class="chart"');
  });

  it('line up glides and flights with what each says', async () => {
    const page = await site.page('entries/spring/tern/');
    const history = page.slice(page.indexOf('id="trim-history"'), page.indexOf('id="glides"'));
    expect(history).toContain('tail-heavy, or too much angle between wing and tail');
    expect(history).toContain('moved 5\u00a0mm back');
    expect(history).toContain('href="#flight-1"');
    expect(history.indexOf('1 May 2031')).toBeLessThan(history.indexOf('4 May 2031'));
  });

  it('tell the weight to add or to take out of the nose, or what is missing', async () => {
    const page = await site.page('entries/spring/tern/');
    const table = page.slice(page.indexOf('id="nose-ballast"')).replaceAll(/<[^>]+>|\s+/g, ' ');
    expect(table).toMatch(
      /10\s%\s+10\.4 ± 2\.1\smm\s[^a-z]+\sin\s+back\s+12\.6 ± 3\.1\sg\s[^a-z]+\soz\s+to take out/,
    );
    expect(table).toMatch(
      /15\s%\s+4\.0 ± 2\.1\smm\s[^a-z]+\sin\s+forward\s+5\.4 ± 3\.1\sg\s[^a-z]+\soz\s+to add/,
    );
    expect((await site.page('entries/spring/wren/')).replaceAll('\u00a0', ' ')).toContain(
      'No weight can be told for 5 % and 10 %: it needs the balance.',
    );
  });
});
