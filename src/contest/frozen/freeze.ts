import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { RuledValue } from '../../model/ruling.ts';
import { significant } from '../../quantities/decimal.ts';
import { momentText } from '../../timing/moment-text.ts';
import type { Contender } from '../contender.ts';
import type { AcceptedFlight } from '../history/accepted-flight.ts';
import { flightsOfResult } from '../history/flights-of-result.ts';
import { recordsAmong } from '../history/records.ts';
import type { ContestResult } from '../standing.ts';
import { factsAsRuled } from '../verdicts/as-ruled.ts';
import type { FrozenResult } from './frozen.ts';

/**
 * A result as it is kept for good: places, claims, records, every flight's time and status, and the facts the best
 * counted flight of each entry rests on (none where no flight counts). Figures carry 12 significant digits. Entries
 * stand in the order of their ids.
 */
export function freeze(
  challenge: Challenge,
  result: ContestResult,
  contenders: readonly Contender[],
  options: { readonly generator: string; readonly closed: CalendarDate },
): FrozenResult {
  const accepted = flightsOfResult(challenge, result, contenders);
  return {
    format: 1,
    generator: options.generator,
    closed: options.closed,
    challenge: {
      id: challenge.id,
      title: challenge.title,
      opens: challenge.opens,
      closes: challenge.closes,
      state: 'final',
      target: challenge.target === null ? null : significant(challenge.target.time),
    },
    standings: result.standings.map(({ u: _, ...standing }) => standing),
    divisions: Object.fromEntries(
      [...result.divisions].map(([id, rows]) => [
        id,
        rows.map(({ place, entry, score }) => ({ place, entry, score })),
      ]),
    ),
    claims: result.claims,
    unplaced: result.unplaced,
    records: recordsAmong(challenge, accepted),
    entries: [...contenders]
      .sort((a, b) => (a.entry.id < b.entry.id ? -1 : 1))
      .map((contender) =>
        frozenEntry(
          challenge,
          result,
          contender,
          accepted.filter((flight) => flight.entry === contender.entry.id),
        ),
      ),
  };
}

function frozenEntry(
  challenge: Challenge,
  result: ContestResult,
  contender: Contender,
  accepted: readonly AcceptedFlight[],
): FrozenResult['entries'][number] {
  const { entry } = contender;
  const judged = result.entries.get(entry.id);
  const best = entry.flights.find(({ number }) => number === judged?.bestCounted);
  return {
    id: entry.id,
    name: entry.name,
    builders: entry.builders.map(({ handle }) => handle),
    flights: (judged?.flights ?? []).map(({ number, date, official, status, reason }) => {
      const flown = entry.flights.find((flight) => flight.number === number)?.date;
      const span = accepted.find((flight) => flight.number === number)?.span;
      return {
        number,
        date,
        ...(flown === undefined || flown.time === null ? {} : { flown: momentText(flown) }),
        official: official.seconds,
        status,
        reason,
        ...(span == null ? {} : { span: span.value }),
      };
    }),
    facts: best === undefined ? {} : rounded(factsAsRuled(challenge, contender, best)),
  };
}

function rounded(facts: Record<string, RuledValue>): Record<string, RuledValue> {
  return Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, roundedValue(value)]));
}

function roundedValue(value: RuledValue): RuledValue {
  if (typeof value === 'number') return significant(value);
  if (!Array.isArray(value)) return value;
  return value.map((item) => (typeof item === 'number' ? significant(item) : item)) as RuledValue;
}
