import { isPresent } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import type { Contender } from '../contender.ts';
import { divisionsMet } from '../ranking/divisions.ts';
import { figuresForLimits } from '../rules/figures-for-limits.ts';
import type { ContestResult, JudgedFlight } from '../standing.ts';
import type { FrozenRecord } from './frozen.ts';

/** One accepted flight as records see it. */
interface RecordFlight {
  readonly entry: string;
  readonly flight: JudgedFlight;
  readonly span: number | null;
  readonly divisions: readonly string[];
}

/**
 * The records of a challenge, of all entries (division null) and of each division: the longest official time, and the
 * largest span that reached the target. Accepted flights of placed entries only; without a target any of them will do
 * for the span. Equal ones go to the earlier calendar date, then to the entry whose id comes first.
 */
export function recordsOf(
  challenge: Challenge,
  result: Pick<ContestResult, 'entries'>,
  contenders: readonly Contender[],
): readonly FrozenRecord[] {
  const flights = contenders.flatMap((contender) => recordFlights(challenge, result, contender));
  return [null, ...challenge.divisions.map(({ id }) => id)].flatMap((division) => {
    const inside = flights.filter(({ divisions }) => division === null || divisions.includes(division));
    const reached = inside.filter(({ flight }) => challenge.target === null || flight.reachedTarget);
    return [
      recordOf('best-time', division, inside, ({ flight }) => flight.official.seconds),
      recordOf('span', division, reached, ({ span }) => span),
    ].filter((record) => record !== null);
  });
}

function recordFlights(
  challenge: Challenge,
  result: Pick<ContestResult, 'entries'>,
  contender: Contender,
): readonly RecordFlight[] {
  const { entry, junior, ruling } = contender;
  const judged = result.entries.get(entry.id);
  if (judged === undefined || judged.unplaced !== null) return [];
  return judged.flights
    .filter(({ status }) => status === 'accepted')
    .flatMap((flight) => {
      const written = entry.flights.find(({ number }) => number === flight.number);
      const setup = entry.setups.find(({ id }) => id === flight.setup);
      if (written === undefined || setup === undefined) return [];
      const figures = figuresForLimits(contender, written, setup.id);
      const span = figures.entry.get('span');
      const asRuled = ruling?.flights.find((one) => one.flight === flight.number)?.asRuled ?? null;
      return [
        {
          entry: entry.id,
          flight,
          span: isPresent(span) ? significant(span.value) : null,
          divisions: divisionsMet(challenge, { design: setup.design, junior, figures }, asRuled),
        },
      ];
    });
}

function recordOf(
  kind: FrozenRecord['kind'],
  division: string | null,
  flights: readonly RecordFlight[],
  measure: (one: RecordFlight) => number | null,
): FrozenRecord | null {
  const records = flights.flatMap((one) => {
    const value = measure(one);
    const { number, date } = one.flight;
    return value === null ? [] : [{ kind, division, value, entry: one.entry, flight: number, date }];
  });
  const [first] = records.sort(
    (a, b) =>
      b.value - a.value || compare(a.date, b.date) || compare(a.entry, b.entry) || a.flight - b.flight,
  );
  return first ?? null;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
