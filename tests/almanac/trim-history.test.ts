import { describe, expect, it } from 'vitest';
import type { FlightRecord } from '../../src/almanac/almanac.ts';
import { type TrimRow, trimHistory } from '../../src/almanac/trim-history.ts';
import type { Flight, Glide } from '../../src/model/entry.ts';
import { design, entryRecord, flight, quantity } from '../pages/almanac-fixture.ts';

// An invented season, put in order by hand.

const glide: Glide = {
  date: null,
  height: null,
  distance: null,
  time: quantity('time', 6, 0.1),
  wind: null,
  direction: null,
  balance: null,
  behaviour: [],
  note: null,
};

function season(): readonly TrimRow[] {
  const first = { id: null, from: null, change: null, design, overrides: [] };
  const moved = { ...design, balance: quantity('length', 0.09, 0.002) };
  const second = { id: 'b', from: '2031-05-04', change: 'A new tail.', design: moved, overrides: [] };
  const record = entryRecord('tern', 20, {
    setups: [first, second],
    glides: [
      { ...glide, date: '2031-05-04', behaviour: ['stalled'], note: 'Nose up.' },
      { ...glide, date: '2031-05-01', balance: quantity('length', 0.075, 0.002), behaviour: ['dived'] },
      { ...glide, behaviour: ['clean', 'gust'] },
    ],
  });
  const flown = (
    number: number,
    date: string,
    changes: Partial<Flight>,
    setup: string | null,
  ): FlightRecord => {
    const [base] = record.flights;
    if (base === undefined) throw new Error('the fixture has a flight');
    const moment = { date, time: null, offset: null, written: date };
    return {
      ...base,
      flight: { ...flight(number, 10 * number), date: moment, ...changes },
      judged: { ...base.judged, number, setup },
    };
  };
  return trimHistory({
    entry: record.entry,
    flights: [
      flown(1, '2031-05-02', {}, null),
      flown(2, '2031-05-04', { balance: quantity('share', 0.4, 0.01) }, 'b'),
      flown(3, '2031-05-04', { behaviour: ['spiralled-left'] }, null),
    ],
  });
}

describe('the trim history', () => {
  it('puts glides, flights and changes in the order of their dates', () => {
    expect(
      season().map((row) => [row.kind, row.date, row.kind === 'flight' ? row.number : row.setup]),
    ).toEqual([
      ['glide', null, null],
      ['glide', '2031-05-01', null],
      ['flight', '2031-05-02', 1],
      ['setup', '2031-05-04', 'b'],
      ['glide', '2031-05-04', 'b'],
      ['flight', '2031-05-04', 2],
      ['flight', '2031-05-04', 3],
    ]);
  });

  it('says what each throw says', () => {
    const verdicts = season().flatMap((row) => (row.kind === 'setup' ? [] : [row.verdicts]));
    expect(verdicts).toEqual([['disturbed'], ['nose-heavy'], ['fine'], ['tail-heavy'], ['fine'], ['left']]);
  });

  it('tells the balance of each, whose it is and how far it moved', () => {
    const balances = season().flatMap((row) =>
      row.kind === 'setup' || row.balance === null
        ? []
        : [[row.balance.at.value, row.balance.own, row.balance.moved]],
    );
    expect(balances.map(([at, own]) => [at, own])).toEqual([
      [0.08, false],
      [0.075, true],
      [0.08, false],
      [0.09, false],
      [0.4, true],
      [0.08, false],
    ]);
    const moves = balances.map(([, , moved]) =>
      typeof moved === 'number' ? Math.round(moved * 1e6) : moved,
    );
    // In µm: 5 mm forward, 5 mm back, 10 mm back by the new setup; a share and a length are not compared.
    expect(moves).toEqual([null, -5000, 5000, 10000, null, null]);
  });

  it('takes an inspected balance before the builder’s', () => {
    const seen = { ...quantity('length', 0.082, 0.001), origin: 'inspected' as const };
    const inspected = { span: null, wingArea: null, airframe: null, rubber: null, balance: seen };
    const setup = { id: null, from: null, change: null, design: { ...design, inspected }, overrides: [] };
    const [row] = trimHistory(entryRecord('tern', 20, { setups: [setup] }));
    expect(row?.kind === 'flight' && row.balance?.at).toBe(seen);
  });
});
