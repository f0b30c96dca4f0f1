import type { FlightRuling, RuledValue, Ruling, Verdict } from '../../model/ruling.ts';
import type { Plain } from '../source/source.ts';
import type { Change } from './after.ts';
import { factsAsWritten } from './facts-as-written.ts';

/** A decision about one flight, every value as the organiser writes it; null where nothing is said. */
export interface Decision {
  readonly verdict: Verdict;
  readonly time: string | null;
  readonly reason: string | null;
  readonly by: string;
  readonly second: string | null;
  readonly date: string;
  readonly received: string | null;
  readonly seen: readonly string[] | null;
  readonly kept: string | null;
}

/** The flight as it stands when it is ruled. */
export interface OnRecord {
  readonly seal: string;
  readonly facts: Readonly<Record<string, RuledValue>>;
}

/**
 * The changes that write a decision into the file of an entry's rulings. A flight ruled before keeps when it was received
 * and where its evidence is kept, and its last verdict goes to `earlier`; what belonged to that verdict alone goes. Every
 * decision is sealed, so that a later change of the flight shows; facts are what an acceptance rests on.
 */
export function ruleFlight(
  ruling: Ruling | null,
  flight: number,
  decision: Decision,
  onRecord: OnRecord,
): Change[] {
  const fields = fieldsOf(decision, onRecord);
  const index = ruling?.flights.findIndex((ruled) => ruled.flight === flight) ?? -1;
  const before = ruling?.flights[index];
  if (before === undefined)
    return [{ do: 'append', at: ['flights'], value: { flight: String(flight), ...written(fields) } }];
  const at = ['flights', index] as const;
  return [
    ...Object.entries(fields).flatMap(([key, value]): Change[] => {
      if (value !== null) return [{ do: 'set', at: [...at, key], value }];
      return kept.has(key) ? [] : [{ do: 'remove', at: [...at, key] }];
    }),
    { do: 'append', at: [...at, 'earlier'], value: earlier(before) },
  ];
}

/** The changes that write seal and facts into an acceptance that stands. */
export function sealAcceptance(index: number, { seal, facts }: OnRecord): Change[] {
  return [
    { do: 'set', at: ['flights', index, 'seal'], value: seal },
    { do: 'set', at: ['flights', index, 'as-ruled'], value: factsAsWritten(facts) },
  ];
}

/** Facts of the flight itself, which a later verdict leaves as they are. */
const kept: ReadonlySet<string> = new Set(['received', 'kept']);

function fieldsOf(decision: Decision, { seal, facts }: OnRecord): Record<string, Plain | null> {
  const { verdict, time, reason, by, second, date, received, seen } = decision;
  const asRuled = verdict === 'accepted' ? factsAsWritten(facts) : null;
  return {
    verdict,
    time,
    reason,
    by,
    second,
    date,
    received,
    seen,
    kept: decision.kept,
    seal,
    'as-ruled': asRuled,
  };
}

function earlier({ verdict, reason, by, date }: FlightRuling): Plain {
  return written({ verdict, reason, by, date });
}

/** The fields in which something is said. */
export function written(fields: Readonly<Record<string, Plain | null>>): Record<string, Plain> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([key, value]) => (value === null ? [] : [[key, value] as const])),
  );
}
