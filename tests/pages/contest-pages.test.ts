import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AwaitingFlight } from '../../src/almanac/awaiting/awaiting.ts';
import { almanacOf, challengeRecord, entryRecord } from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

// An almanac written by hand; the wording pinned here is the project's own.

const waiting = (number: number, changes: Partial<AwaitingFlight>): AwaitingFlight => ({
  number,
  date: '2031-05-04',
  days: 28,
  seconds: 44,
  waits: [{ kind: 'ruling' }],
  place: { before: null, after: 9 },
  ...changes,
});

const gone = {
  id: 'snipe',
  name: 'Snipe & <b>Daughter</b>',
  builders: ['no-page'],
  flights: [
    { number: 1, date: '2031-05-11', official: 33, status: 'refused', reason: 'No landing seen.' },
  ] as const,
  facts: {},
};

const textOf = (html: string) =>
  html
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .replaceAll('\u00a0', ' ');

let site: BuiltPages;

beforeAll(async () => {
  const record = challengeRecord([44, 31], [entryRecord('heron', 44), entryRecord('bittern', 31)]);
  const [judgedFlight] = record.entries[0]?.judged.flights ?? [];
  site = await buildPages(
    almanacOf([
      {
        ...record,
        result: {
          ...record.result,
          entries: new Map([
            ...record.result.entries,
            [
              'snipe',
              {
                ...record.entries[0]!.judged,
                entry: 'snipe',
                flights: [
                  {
                    ...judgedFlight!,
                    ...gone.flights[0],
                    official: { ...judgedFlight!.official, seconds: 33 },
                  },
                ],
              },
            ],
          ]),
        },
        frozen: {
          format: 1,
          generator: '1.0.0',
          closed: '2031-12-01',
          challenge: { id: 'spring', title: '', opens: '2031-04-01', closes: '2031-09-30' },
          standings: [],
          divisions: {},
          claims: [],
          unplaced: [],
          records: [],
          entries: [gone],
        },
        awaiting: [
          {
            entry: 'heron',
            name: 'Model heron',
            flights: [
              waiting(1, {}),
              waiting(2, {
                waits: [
                  {
                    kind: 'new-ruling',
                    ruledOn: '2031-05-10',
                    changes: [{ what: 'wing-loading', ruled: '14.0 g/dm2', now: '13.7 g/dm2' }],
                  },
                  { kind: 'evidence', given: 0, needed: 1 },
                ],
                place: { before: 7, after: 4 },
              }),
            ],
          },
        ],
      },
    ]),
  );
});

afterAll(() => site.remove());

describe('the page of what waits', () => {
  it('names an aircraft once above its flights, each with a link to it', async () => {
    const main = (await site.page('challenges/spring/awaiting/')).split('<main')[1] ?? '';
    expect(main.match(/Model heron/g)).toHaveLength(1);
    expect(main).toContain(`href="${base}entries/spring/heron/#flight-1"`);
    expect(main).toContain(`href="${base}entries/spring/heron/#flight-2"`);
  });

  it('says in whole sentences what each waits for and what an acceptance would do', async () => {
    const text = textOf(await site.page('challenges/spring/awaiting/'));
    expect(text).toMatch(
      /Flight 1 44\.0 s 4 May 2031 , 28 days ago Waits for a ruling\. If accepted, it would be placed 9th\./,
    );
    expect(text).toContain(
      'Waits for a new ruling: ruled on 10 May 2031, and the wing loading was 14.0 g/dm² then and is 13.7 g/dm² now.',
    );
    expect(text).toContain('Waits for evidence: 0 links of 1. If accepted, it would move from 7th to 4th.');
  });
});

describe('the page of an entry that only the final result still tells of', () => {
  it('says so, shows its flights, escapes its name and is not listed', async () => {
    const page = await site.page('entries/spring/snipe/');
    expect(page).toContain('<h1>Snipe &amp; &lt;b&gt;Daughter&lt;/b&gt;</h1>');
    expect(page).toContain('name="robots" content="noindex"');
    expect(textOf(page)).toContain('This aircraft is no longer told of here.');
    expect(textOf(page)).toMatch(/1 11 May 2031 33\.0 s refused No landing seen\./);
    expect(page).toContain('id="flight-1"');
  });
});
