import type { Contender } from '../../contest/contender.ts';
import { judge } from '../../contest/judge.ts';
import type { ContestResult } from '../../contest/standing.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { FlightRuling } from '../../model/ruling.ts';
import type { PlaceIfAccepted } from './awaiting.ts';

const sealAsItIs = 'as it is written now';

/**
 * Where an entry would stand if one of its flights were accepted as it is written now and nothing else changed; null where
 * an acceptance could not make that flight count.
 *
 * @param contenders every contender of the challenge by the entry's id
 * @param result of the challenge as it stands, not frozen
 */
export function placeIfAccepted(
  challenge: Challenge,
  contenders: ReadonlyMap<string, Contender>,
  result: ContestResult,
  entry: string,
  flight: number,
  today: CalendarDate,
): PlaceIfAccepted | null {
  const contender = contenders.get(entry);
  if (contender === undefined) return null;
  const accepted = withAccepted(contender, flight);
  const judgeOf = (some: readonly Contender[]) => judge(challenge, some, { now: today, frozen: null });
  const alone = judgeOf([accepted]);
  const verdict = alone.entries.get(entry)?.flights.find(({ number }) => number === flight);
  if (verdict?.status !== 'accepted') return null;
  const before = result.standings.find((standing) => standing.entry === entry)?.place ?? null;
  const [own] = alone.standings;
  if (own === undefined) return { before, after: null };
  // Places follow the score; only among equal scores does anything else decide, so only those are ranked anew.
  const others = result.standings.filter((standing) => standing.entry !== entry);
  const above = others.filter(({ score }) => score > own.score).length;
  const equal = others
    .filter(({ score }) => score === own.score)
    .flatMap((standing) => contenders.get(standing.entry) ?? []);
  const among = judgeOf([accepted, ...equal]).standings.find((standing) => standing.entry === entry);
  return { before, after: above + (among?.place ?? 1) };
}

function withAccepted(contender: Contender, flight: number): Contender {
  const { challenge, id } = contender.entry;
  const ruling = contender.ruling ?? {
    challenge,
    entry: id,
    inspections: [],
    flights: [],
    disqualified: null,
    body: '',
  };
  const earlier = ruling.flights.find((one) => one.flight === flight);
  const accepted: FlightRuling = {
    flight,
    verdict: 'accepted',
    by: '',
    date: '',
    second: null,
    received: earlier?.received ?? null,
    reason: null,
    time: null,
    seen: [],
    kept: null,
    seal: sealAsItIs,
    asRuled: {},
    earlier: [],
  };
  return {
    ...contender,
    ruling: { ...ruling, flights: [...ruling.flights.filter((one) => one.flight !== flight), accepted] },
    seals: new Map([...contender.seals, [flight, sealAsItIs]]),
  };
}
