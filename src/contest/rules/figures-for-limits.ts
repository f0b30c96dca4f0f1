import type { FigureSet } from '../../figures/figure.ts';
import type { Flight } from '../../model/entry.ts';
import type { Contender } from '../contender.ts';

/**
 * The figures that limits, divisions and scale see at a flight: those of the model in the flight's setup, worked out
 * anew only where the flight states a mass of its own.
 */
export function figuresForLimits(
  contender: Pick<Contender, 'modelFigures' | 'figuresAtFlight'>,
  flight: Flight,
  setup: string | null,
): FigureSet {
  return flight.mass === null ? contender.modelFigures(setup) : contender.figuresAtFlight(flight, setup);
}
