import { describe, expect, it } from 'vitest';
import { boardRows, buildersOf, targetLineAfter } from '../../src/components/board-rows.ts';
import { almanacOf, challengeRecord, entryRecord } from './almanac-fixture.ts';

function rowsOf(times: readonly number[]) {
  const record = challengeRecord(times);
  return boardRows(almanacOf([record]), record, record.result.standings);
}

describe('target line', () => {
  it('stands after those who reached the target, ends included', () => {
    expect(targetLineAfter(rowsOf([44, 30, 29.9]))).toBe(2);
  });

  it('stands on top where nobody did, and at the bottom where all did', () => {
    expect(targetLineAfter(rowsOf([29, 12]))).toBe(0);
    expect(targetLineAfter(rowsOf([44, 31]))).toBe(2);
    expect(targetLineAfter([])).toBe(0);
  });

  it('is left out where a handicap mixes both sides', () => {
    expect(targetLineAfter(rowsOf([29, 44]))).toBeNull();
  });
});

describe('board rows', () => {
  it('carry what they are sorted by in SI, whatever the units of the page', () => {
    const [row] = rowsOf([44.5]);
    expect(row?.seconds).toBe(44.5);
    expect(row?.control).toBe('free');
    expect(row?.counted).toBe(1);
    // As the fixture states them: a span of 2 m, 7.9 N/m2; it has no energy and no turns.
    expect(row?.figures.map((figure) => figure?.value ?? null)).toEqual([2, 7.9, null, null]);
  });

  it('show the aircraft from above, as a picture that a screen reader passes over', () => {
    const [row] = rowsOf([44.5]);
    expect(row?.drawing).toMatch(/^<svg class="thumbnail"[^>]* aria-hidden="true">/);
  });

  it('name a junior by handle only, also where the builder’s file says so and the entry does not', () => {
    const record = challengeRecord(
      [40],
      [
        entryRecord('kite', 40, {
          builders: [{ handle: 'small-fox', name: 'Real Name', club: 'Club', junior: false }],
        }),
      ],
    );
    const almanac = almanacOf([record], {
      builders: [
        {
          builder: {
            handle: 'small-fox',
            name: 'Real Name',
            club: null,
            junior: true,
            link: null,
            formerly: [],
            body: '',
          },
          entries: [],
          html: '',
        },
      ],
    });
    const [row] = boardRows(almanac, record, record.result.standings);
    expect(row?.builders).toEqual([{ handle: 'small-fox', name: 'small-fox', club: null, hasPage: true }]);
  });

  it('keep an aircraft of a frozen result that can no longer be read, by the name it was frozen with', () => {
    const record = challengeRecord([40, 35]);
    const frozen = {
      format: 1,
      generator: '0.1.0',
      closed: '2031-12-01',
      challenge: { id: 'spring', title: '', opens: '', closes: '' },
      standings: [],
      divisions: {},
      claims: [],
      unplaced: [],
      records: [],
      entries: [{ id: 'm2', name: 'Gone but placed', builders: ['mthorn'], flights: [], facts: {} }],
    } as const;
    const later = { ...record, frozen, entries: record.entries.slice(0, 1) };
    const rows = boardRows(almanacOf([later]), later, record.result.standings);
    expect(rows[1]).toMatchObject({ name: 'Gone but placed', published: true, place: 2 });
    const lookedAt = almanacOf([later], { leftOut: [{ challenge: 'spring', entry: 'm2' }] });
    expect(boardRows(lookedAt, later, record.result.standings)[1]).toMatchObject({ published: false });
  });
});

describe('the builders of a board', () => {
  it('stand once each, by name without regard to marks', () => {
    const named = (handle: string, name: string) => ({ handle, name, club: null, junior: false });
    const record = challengeRecord(
      [40, 35, 30],
      [
        entryRecord('kite', 40, { builders: [named('zed', 'Zed'), named('owl', 'Élan Owl')] }),
        entryRecord('lark', 35, { builders: [named('adder', 'Adder')] }),
        entryRecord('teal', 30, { builders: [named('zed', 'Zed')] }),
      ],
    );
    const rows = boardRows(almanacOf([record]), record, record.result.standings);
    expect(buildersOf(rows).map(({ name }) => name)).toEqual(['Adder', 'Élan Owl', 'Zed']);
  });
});
