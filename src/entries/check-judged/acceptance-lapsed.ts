import { problemAt } from '../problems/make-problem.ts';
import { locate } from '../source/locate.ts';
import { type CrossCheck, pathOfFlight } from './cross-check.ts';

/** An acceptance that no longer fits what is written: the flight waits for a new ruling. */
export const checkAcceptanceLapsed: CrossCheck = ({ record, source, rulings, state }) =>
  rulings === null || state === 'final'
    ? []
    : record.flights.flatMap(({ flight, judged }) => {
        if (judged.stale.length === 0) return [];
        const differs = judged.stale.map(({ what, ruled, now }) =>
          what === 'seal' ? sealDiffers(ruled) : `${what} was ${ruled} and is ${now}`,
        );
        return [
          problemAt(rulings, pathOfFlight(rulings, flight.number, 'flight'), 'value', 'acceptance-lapsed', {
            message: `The acceptance of flight ${flight.number} of "${record.entry.name}" has no effect now: ${differs.join('; ')}. Look at the flight again and rule anew.`,
            found: String(flight.number),
            related: {
              ...locate(source, pathOfFlight(source, flight.number), 'value'),
              message: 'the flight as it is written now',
            },
          }),
        ];
      });

function sealDiffers(ruled: string): string {
  return ruled === 'none' ? 'it carries no seal' : 'what the builder wrote of the flight has changed since';
}
