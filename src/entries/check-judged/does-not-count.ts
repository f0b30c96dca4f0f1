import { problemAt } from '../problems/make-problem.ts';
import { type CrossCheck, pathOfFlight } from './cross-check.ts';

/** Says of a flight that the rules leave out why, where its builder looks first. */
export const checkDoesNotCount: CrossCheck = ({ record, source, state }) =>
  state === 'final'
    ? []
    : record.flights.flatMap(({ flight, judged }) =>
        judged.status === 'ineligible' || judged.status === 'outside-dates'
          ? [
              problemAt(source, pathOfFlight(source, flight.number), 'value', 'flight-does-not-count', {
                message: `Flight ${flight.number} does not count under the rules of the challenge: ${judged.reason}.`,
                found: String(flight.number),
              }),
            ]
          : [],
      );
