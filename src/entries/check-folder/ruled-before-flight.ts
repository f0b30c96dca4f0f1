import { precedesFlight } from '../../contest/verdicts/precedes-flight.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';
import { type RuledFlight, ruledFlights } from './ruled-flights.ts';

/** Nobody decides on a flight, or has it in hand, before it was flown. */
export const ruledBeforeFlight: FolderCheck = {
  code: 'ruled-before-flight',
  scope: 'ruling',
  check: (content) => ruledFlights(content).flatMap(tooEarly),
};

function tooEarly({ ruled, index, source, entry }: RuledFlight): Problem[] {
  const at = entry.value.flights.findIndex(({ number }) => number === ruled.flight);
  const flown = entry.value.flights[at]?.date.date;
  if (flown === undefined) return [];
  const days = [
    { key: 'date', day: ruled.date, what: 'ruled on' },
    { key: 'received', day: ruled.received, what: 'handed in on' },
  ];
  return days.flatMap(({ key, day, what }): Problem[] =>
    day === null || !precedesFlight(day, flown)
      ? []
      : [
          problemAt(source, ['flights', index, key], 'value', 'ruled-before-flight', {
            message: `Flight ${ruled.flight} of "${entry.value.name}" is ${what} ${day}, before it was flown on ${flown}. Correct whichever day is wrong.`,
            found: day,
            accepted: `${flown} or a later day`,
            related: {
              ...locate(entry.source, ['flights', at, 'date'], 'value'),
              message: 'The day of the flight stands here.',
            },
          }),
        ],
  );
}
