import type { Status } from '../../contest/standing.ts';
import { canonicalFlight } from '../../entries/seal.ts';
import { nodeAt } from '../../entries/source/locate.ts';
import type { SourceDocument } from '../../entries/source/source.ts';
import type { FlightRuling } from '../../model/ruling.ts';
import type { FlightRecord } from '../almanac.ts';
import type { PlaceIfAccepted, Wait } from '../awaiting/awaiting.ts';
import type { ChangedValue } from './changed-values.ts';
import type { EntryPair } from './entry-pairs.ts';
import { challengeOf, type EntryOnSide, rulingsOn, type Side } from './side.ts';

/** A flight as one side has it. */
export interface FlightOnSide {
  readonly date: string;
  /** Official time, seconds. */
  readonly seconds: number;
  readonly status: Status;
  readonly reason: string | null;
}

export interface ChangedFlight {
  readonly number: number;
  /** The number it had; null unless it was numbered anew. */
  readonly was: number | null;
  /** `judged`: written as before, and the rules say something else of it; `words`: only words about it changed. */
  readonly change: 'added' | 'changed' | 'words' | 'removed' | 'renumbered' | 'judged';
  readonly before: FlightOnSide | null;
  readonly after: FlightOnSide | null;
  readonly values: readonly ChangedValue[];
  /** The ruling that was there before the change. */
  readonly ruling: Pick<FlightRuling, 'verdict' | 'date'> | null;
  /** Whether that ruling is still the same one. */
  readonly ruledAnew: boolean;
  /** What it waits for now; empty where it waits for nothing. */
  readonly waits: readonly Wait[];
  /** What an acceptance would do to the aircraft's place; null where it waits for nothing. */
  readonly place: PlaceIfAccepted | null;
}

/** The flights of an aircraft that are not what they were, by number. */
export function changedFlights(
  pair: EntryPair,
  values: readonly ChangedValue[],
  after: Side,
): readonly ChangedFlight[] {
  const [was, is] = [flightsOf(pair.before), flightsOf(pair.after)];
  const [written, now] = [canonicalOf(pair.before), canonicalOf(pair.after)];
  const anew = renumbered(written, now);
  const left = new Set(anew.values());
  const awaiting =
    challengeOf(after, pair.challenge)?.awaiting.find(({ entry }) => entry === pair.entry)?.flights ?? [];
  const numbers = [...new Set([...was.keys(), ...is.keys()])].sort((a, b) => a - b);
  return numbers.flatMap((number): ChangedFlight[] => {
    if (!is.has(number) && left.has(number)) return [];
    const old = anew.get(number) ?? null;
    const own = values.filter(({ flight }) => flight === String(number));
    const [before, fresh] = [was.get(old ?? number), is.get(number)];
    const change =
      old !== null
        ? 'renumbered'
        : before === undefined
          ? 'added'
          : fresh === undefined
            ? 'removed'
            : written.get(number) !== now.get(number)
              ? 'changed'
              : own.length > 0
                ? 'words'
                : before.judged.status !== fresh.judged.status ||
                    before.judged.official.seconds !== fresh.judged.official.seconds
                  ? 'judged'
                  : null;
    if (change === null) return [];
    const ruling = rulingOn(pair.before, old ?? number);
    const wait = awaiting.find((one) => one.number === number);
    return [
      {
        number,
        was: old,
        change,
        before: onSide(before),
        after: onSide(fresh),
        values: own,
        ruling: ruling === null ? null : { verdict: ruling.verdict, date: ruling.date },
        ruledAnew: ruling !== null && !sameRuling(ruling, rulingOn(pair.after, number)),
        waits: wait?.waits ?? [],
        place: wait?.place ?? null,
      },
    ];
  });
}

function flightsOf(side: EntryOnSide | null): ReadonlyMap<number, FlightRecord> {
  return new Map((side?.record.flights ?? []).map((record) => [record.flight.number, record]));
}

function onSide(record: FlightRecord | undefined): FlightOnSide | null {
  if (record === undefined) return null;
  const { status, reason, official } = record.judged;
  return { date: record.flight.date.date, seconds: official.seconds, status, reason };
}

function rulingOn(side: EntryOnSide | null, number: number): FlightRuling | null {
  return rulingsOn(side).get(number) ?? null;
}

function sameRuling(before: FlightRuling, after: FlightRuling | null): boolean {
  return (
    after !== null &&
    before.verdict === after.verdict &&
    before.date === after.date &&
    before.seal === after.seal &&
    before.time === after.time
  );
}

/** Every flight as its seal sees it, by number. */
function canonicalOf(side: EntryOnSide | null): ReadonlyMap<number, string> {
  if (side === null) return new Map();
  const { source } = side.read;
  const flights = nodeAt(source, ['flights']);
  const items = flights?.kind === 'list' ? flights.items : [];
  return new Map(
    items.flatMap((_, index) => {
      const number = numberAt(source, index);
      const canonical = canonicalFlight(source, index);
      return number === null || canonical === null ? [] : [[number, canonical] as const];
    }),
  );
}

function numberAt(source: SourceDocument, index: number): number | null {
  const node = nodeAt(source, ['flights', index, 'number']);
  return node?.kind === 'scalar' && /^\d+$/.test(node.text) ? Number(node.text) : null;
}

/** New number → old number, of flights that are written word for word as one that is gone. */
function renumbered(
  was: ReadonlyMap<number, string>,
  is: ReadonlyMap<number, string>,
): ReadonlyMap<number, number> {
  const gone = new Map(
    [...was].filter(([number]) => !is.has(number)).map(([number, text]) => [bare(text), number]),
  );
  const anew = new Map<number, number>();
  for (const [number, text] of is) {
    const old = was.has(number) ? undefined : gone.get(bare(text));
    if (old !== undefined) anew.set(number, old);
  }
  return anew;
}

function bare(canonical: string): string {
  return canonical.replace(/"number":\d+,?/, '');
}
