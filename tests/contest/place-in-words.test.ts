import { describe, expect, it } from 'vitest';
import type { Contender } from '../../src/contest/contender.ts';
import { judge } from '../../src/contest/judge.ts';
import { placeInWords } from '../../src/contest/ranking/place-in-words.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Flight } from '../../src/model/entry.ts';
import { challenge, noFlyingRules } from './invented-challenge.ts';
import { accepted, contender, figure, figures, flight, seconds } from './invented-contender.ts';

// The arithmetic behind every expected line was done by hand; it stands in the line itself.

function flown(
  id: string,
  flights: readonly Flight[],
  parts: Parameters<typeof contender>[1] = {},
): Contender {
  return contender(id, { flights, rulings: flights.map(({ number }) => accepted(number)), ...parts });
}

function explained(rules: Partial<Challenge>, contenders: readonly Contender[], division?: string): string[] {
  const ruled = challenge(rules);
  const result = judge(ruled, contenders, { now: '2027-06-01', frozen: null });
  const table = division === undefined ? result.standings : (result.divisions.get(division) ?? []);
  const entry = (id: string) => contenders.find((one) => one.entry.id === id)?.entry;
  const sources = { challenge: ruled, result, entry, name: (id: string) => `The ${id}` };
  return table.map((row) => `${row.place} ${placeInWords(sources, table, row)}`);
}

const watches = (...read: number[]): Partial<Flight> => ({ watches: read.map(seconds) });

describe('a place explains itself', () => {
  it('by the best flight, its watches and its rounding', () => {
    expect(explained({}, [flown('avocet', [flight(3, 0, watches(41.62, 41.8))])])).toEqual([
      '1 41.7 s: flight 3, mean of 41.62 s and 41.8 s, rounded down to 0.1 s',
    ]);
  });

  it('by what parted it from neighbours of the same score, on both sides', () => {
    const lines = explained({ tieBreaks: [{ kind: 'next-best-flight' }] }, [
      flown('avocet', [flight(1, 41.7), flight(2, 40)]),
      flown('bittern', [flight(1, 41.7), flight(2, 39)]),
      flown('crake', [flight(1, 41.7)]),
    ]);
    expect(lines).toEqual([
      '1 41.7 s: flight 1, one watch at 41.7 s, rounded down to 0.1 s; ahead of The bittern by next-best flight',
      '2 41.7 s: flight 1, one watch at 41.7 s, rounded down to 0.1 s; behind The avocet by next-best flight; ahead of The crake by next-best flight',
      '3 41.7 s: flight 1, one watch at 41.7 s, rounded down to 0.1 s; behind The bittern by next-best flight',
    ]);
  });

  it('by those it shares with', () => {
    const lines = explained({}, [
      flown('avocet', [flight(1, 41.7)]),
      flown('bittern', [flight(1, 41.7)]),
      flown('crake', [flight(1, 41.7)]),
    ]);
    expect(lines[0]).toBe(
      '1 41.7 s: flight 1, one watch at 41.7 s, rounded down to 0.1 s; shares the place with The bittern and The crake',
    );
  });

  it('by the measured difference that parted it', () => {
    const size = (span: number) => ({ figures: figures(figure('span', 'm', span, 0.005)) });
    const lines = explained({ tieBreaks: [{ kind: 'figure', figure: 'span', prefers: 'larger' }] }, [
      flown('avocet', [flight(1, 30)], size(2.4)),
      flown('bittern', [flight(1, 30)], size(3.2)),
    ]);
    expect(lines[0]).toBe(
      '1 30.0 s: flight 1, one watch at 30 s, rounded down to 0.1 s; ahead of The avocet by larger span',
    );
  });

  it('by the maximum where the flight was longer', () => {
    const rules = { flying: { ...noFlyingRules, maximum: 180 } };
    expect(explained(rules, [flown('avocet', [flight(1, 193.2)])])).toEqual([
      '1 180.0 s: flight 1, one watch at 193.2 s, rounded down to 0.1 s: 193.2 s, counted as the maximum of 180.0 s',
    ]);
  });

  it('by the handicap factor', () => {
    const scoring = {
      method: 'best',
      flights: 3,
      scale: { by: 'span', reference: 2.4, power: 0.5 },
      provisional: 'apart',
    } as const;
    // √(3.2 / 2.4) = 1.1547; 40 s × 1.154700538 = 46.188 s
    expect(
      explained({ scoring }, [
        flown('avocet', [flight(1, 40)], { figures: figures(figure('span', 'm', 3.2)) }),
      ]),
    ).toEqual([
      '1 46.188 s: flight 1, one watch at 40 s, rounded down to 0.1 s: 40.0 s, × 1.155 for the handicap',
    ]);
  });

  it('by the flights added up, a missing one as 0', () => {
    const scoring = { method: 'sum', flights: 3, scale: null, provisional: 'apart' } as const;
    const lines = explained({ scoring }, [
      flown('avocet', [flight(1, 50), flight(2, 61.2), flight(3, 40), flight(4, 55.5)]),
      flown('bittern', [flight(1, 70), flight(2, 60)]),
    ]);
    // 61.2 + 55.5 + 50 = 166.7; 70 + 60 + 0 = 130
    expect(lines).toEqual([
      '1 166.7 s: sum of 61.2 s (flight 2), 55.5 s (flight 4) and 50.0 s (flight 1)',
      '2 130.0 s: sum of 70.0 s (flight 1) and 60.0 s (flight 2) and one missing flight, counted as 0 s',
    ]);
  });

  it('by the mean, with capped flights at the maximum', () => {
    const scoring = { method: 'mean', flights: 2, scale: null, provisional: 'apart' } as const;
    const rules = { scoring, flying: { ...noFlyingRules, maximum: 60 } };
    // (60 + 50.5) / 2 = 55.25
    expect(explained(rules, [flown('avocet', [flight(1, 72), flight(2, 50.5)])])).toEqual([
      '1 55.250 s: mean of 60.0 s (flight 1) and 50.5 s (flight 2)',
    ]);
  });

  it('by the rounds, and by the fly-off that alone decided between full scores', () => {
    const scoring = { method: 'rounds', flights: 3, scale: null, provisional: 'apart' } as const;
    const round = (id: string, maximum: number, flyOff = false) => ({
      id,
      maximum,
      from: null,
      to: null,
      flyOff,
    });
    const rounds = [round('r1', 240), round('r2', 180), round('f1', 300, true), round('f2', 360, true)];
    const all = (...times: number[]) =>
      times.map((time, index) => flight(index + 1, time, { round: rounds[index]?.id ?? null }));
    // 240 + 180 = 420 twice; the first fly-off full twice, the second parts 359 s from 308 s; 240 + 178 = 418.
    expect(
      explained({ scoring, rounds }, [
        flown('avocet', all(250, 190, 301, 359)),
        flown('bittern', all(240, 180, 300, 308)),
        flown('crake', all(240, 178)),
        flown('dotterel', all(100)),
      ]),
    ).toEqual([
      '1 420.0 s: full in all 2 rounds; fly-off f1 300.0 s (full); fly-off f2 359.0 s; ahead of The bittern by fly-off f2',
      '2 420.0 s: full in all 2 rounds; fly-off f1 300.0 s (full); fly-off f2 308.0 s; behind The avocet by fly-off f2',
      '3 418.0 s: r1 240.0 s (full), r2 178.0 s',
      '4 100.0 s: r1 100.0 s, r2 not flown',
    ]);
  });

  it('by a ruled time', () => {
    const ruled = contender('avocet', {
      flights: [flight(1, 40)],
      rulings: [accepted(1, { time: 43.1 })],
    });
    expect(explained({}, [ruled])).toEqual(['1 43.1 s: flight 1, ruled to be 43.1 s']);
  });

  it('by acceptance, where provisional flights are ranked', () => {
    const scoring = { method: 'best', flights: 3, scale: null, provisional: 'ranked' } as const;
    const lines = explained({ scoring }, [
      flown('avocet', [flight(1, 30)]),
      contender('bittern', { flights: [flight(1, 30)] }),
    ]);
    expect(lines).toEqual([
      '1 30.0 s: flight 1, one watch at 30 s, rounded down to 0.1 s; ahead of The bittern by acceptance before a provisional time',
      '2 30.0 s: flight 1, one watch at 30 s, rounded down to 0.1 s; waits for a ruling; behind The avocet by acceptance before a provisional time',
    ]);
  });

  it('within a division by the neighbours of that division', () => {
    const divisions = [
      { id: 'free', name: 'Free flight', conditions: [{ kind: 'fact', fact: 'control', allowed: ['free'] }] },
    ] as Challenge['divisions'];
    const guided = {
      setups: [{ id: null, from: null, change: null, design: contenderDesign('guided'), overrides: [] }],
    };
    const lines = explained(
      { divisions },
      [
        flown('avocet', [flight(1, 30)]),
        flown('bittern', [flight(1, 30)], guided as never),
        flown('crake', [flight(1, 30)]),
      ],
      'free',
    );
    expect(lines[0]).toBe(
      '1 30.0 s: flight 1, one watch at 30 s, rounded down to 0.1 s; shares the place with The crake',
    );
  });
});

function contenderDesign(control: 'free' | 'guided') {
  return { ...contender('any').entry.setups[0].design, control };
}
