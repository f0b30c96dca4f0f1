import { isPresent } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import type { Contender } from '../contender.ts';
import { divisionsMet } from '../ranking/divisions.ts';
import { figuresForLimits } from '../rules/figures-for-limits.ts';
import type { ContestResult } from '../standing.ts';
import type { FlightInDivisions } from './accepted-flight.ts';
import { inOrderFlown } from './order-flown.ts';

/** Every accepted flight of the placed entries, in the order flown; none of those withdrawn or disqualified. */
export function flightsOfResult(
  challenge: Challenge,
  result: Pick<ContestResult, 'entries'>,
  contenders: readonly Contender[],
): readonly FlightInDivisions[] {
  return inOrderFlown(contenders.flatMap((contender) => flightsOf(challenge, result, contender)));
}

function flightsOf(
  challenge: Challenge,
  result: Pick<ContestResult, 'entries'>,
  contender: Contender,
): readonly FlightInDivisions[] {
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
          number: flight.number,
          builders: entry.builders.map(({ handle }) => handle),
          flown: written.date,
          seconds: flight.official.seconds,
          span: isPresent(span) ? { value: significant(span.value), u: span.u } : null,
          reachedTarget: flight.reachedTarget,
          divisions: divisionsMet(challenge, { design: setup.design, junior, figures }, asRuled),
        },
      ];
    });
}
