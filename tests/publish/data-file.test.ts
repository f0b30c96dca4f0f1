import { describe, expect, it } from 'vitest';
import { evaluateBatch } from '../../src/figures/evaluate.ts';
import { challengeData, rubberData } from '../../src/publish/data-file.ts';
import { batch, stretchTest } from '../figures/example-design.ts';
import { almanac, challengeRecord } from './sample-almanac.ts';

describe('the data file of a challenge', () => {
  // Keys, their order and the numbers are those of the example in the published description of format 1 of data files.
  it('has the keys of the format in their order, SI numbers with 12 digits, and says what is absent', () => {
    const expected = {
      format: 1,
      challenge: {
        id: 'long-haul',
        title: 'Long Haul',
        opens: '2027-03-01',
        closes: '2027-10-31',
        state: 'open',
        target: 40,
      },
      standings: [
        {
          place: 1,
          entry: 'reedling',
          divisions: ['free'],
          score: 41.7,
          provisional: false,
          flights: [1],
          'tie-break': null,
          'within-timing-error-of': ['bittern'],
        },
      ],
      claims: [{ entry: 'reedling', score: 44.2, flights: [2] }],
      unplaced: [{ entry: 'godwit', reason: 'no counted flight' }],
      divisions: { free: [{ place: 1, entry: 'reedling', score: 41.7 }] },
      entries: [
        {
          id: 'reedling',
          name: 'Reedling',
          builders: ['amarsh'],
          setup: null,
          flights: [
            {
              number: 1,
              date: '2027-05-09',
              official: 41.7,
              status: 'accepted',
              reason: null,
              setup: null,
              figures: {},
              motors: [],
            },
          ],
          figures: {
            'tail-volume': { absent: "needs the tailplane's arm" },
            'wing-loading': { value: 7.19843961938, u: 0.053, unit: 'N/m2', basis: 'measured' },
          },
          motors: [
            { figures: { 'skein-section': { value: 3.5e-5, u: 1e-6, unit: 'm2', basis: 'measured' } } },
          ],
          setups: [
            {
              id: 'b',
              figures: {
                'tail-volume': { absent: "needs the tailplane's arm" },
                'wing-loading': { value: 7.19843961938, u: 0.053, unit: 'N/m2', basis: 'measured' },
              },
              motors: [],
            },
          ],
        },
      ],
    };
    // Compared as text, so that the order of keys counts.
    expect(challengeData(challengeRecord)).toBe(`${JSON.stringify(expected)}\n`);
  });

  it('keeps the flights of an entry that only the frozen result still knows', () => {
    const frozen = {
      format: 1 as const,
      generator: '0.1.0',
      closed: '2027-12-01',
      challenge: { id: 'long-haul', title: 'Long Haul', opens: '2027-03-01', closes: '2027-10-31' },
      standings: [],
      divisions: {},
      claims: [],
      unplaced: [],
      records: [],
      entries: [
        {
          id: 'bittern',
          name: 'Bittern',
          builders: ['otter'],
          flights: [
            { number: 3, date: '2027-05-01', official: 41.6, status: 'accepted' as const, reason: null },
          ],
          facts: {},
        },
      ],
    };
    const data = JSON.parse(challengeData({ ...challengeRecord, frozen }));
    expect(data.entries.map((one: { id: string }) => one.id)).toEqual(['bittern', 'reedling']);
    expect(data.entries[0]).toMatchObject({ name: 'Bittern', figures: {}, flights: [{ official: 41.6 }] });
  });
});

describe('the data file of rubber', () => {
  it('lists no batch where there is none', () => {
    expect(rubberData(almanac)).toBe('{"batches":[]}\n');
  });

  it('has each batch with its figures', () => {
    const tested = batch({ stretchTests: [stretchTest()] });
    const record = { batch: tested, figures: evaluateBatch(tested), html: '' };
    // By hand: 44 N out and 41 N back per unit of stretch, on 0.1 m that weigh 0.33 g: 13333.33 and 12424.24 J/kg; 41/44.
    expect(JSON.parse(rubberData({ batches: [record] }))).toEqual({
      batches: [
        {
          id: tested.id,
          label: tested.label,
          figures: {
            'return-ratio': { value: 0.931818181818, u: 0, unit: '1', basis: 'logged' },
            'stretch-energy-in': {
              value: 13333.3333333,
              u: expect.any(Number),
              unit: 'J/kg',
              basis: 'logged',
            },
            'stretch-energy-out': {
              value: 12424.2424242,
              u: expect.any(Number),
              unit: 'J/kg',
              basis: 'logged',
            },
          },
        },
      ],
    });
  });
});
