import { precedesFlight } from '../../contest/verdicts/precedes-flight.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

/** Nobody decides on a flight, or has it in hand, before it was flown. */
export const ruledBeforeFlight: FolderCheck = {
  code: 'ruled-before-flight',
  scope: 'ruling',
  check({ entries, rulings }) {
    const byAddress = new Map(entries.map((entry) => [`${entry.value.challenge}/${entry.value.id}`, entry]));
    return rulings.flatMap(({ value: ruling, source }): Problem[] => {
      const entry = byAddress.get(`${ruling.challenge}/${ruling.entry}`);
      if (entry === undefined) return [];
      return ruling.flights.flatMap(({ flight: number, date, received }, index): Problem[] => {
        const at = entry.value.flights.findIndex((flight) => flight.number === number);
        const flown = entry.value.flights[at]?.date.date;
        if (flown === undefined) return [];
        const days = [
          { key: 'date', day: date, what: 'ruled on' },
          { key: 'received', day: received, what: 'handed in on' },
        ];
        return days.flatMap(({ key, day, what }): Problem[] =>
          day === null || !precedesFlight(day, flown)
            ? []
            : [
                problemAt(source, ['flights', index, key], 'value', 'ruled-before-flight', {
                  message: `Flight ${number} of "${entry.value.name}" is ${what} ${day}, before it was flown on ${flown}. Correct whichever day is wrong.`,
                  found: day,
                  accepted: `${flown} or a later day`,
                  related: {
                    ...locate(entry.source, ['flights', at, 'date'], 'value'),
                    message: 'The day of the flight stands here.',
                  },
                }),
              ],
        );
      });
    });
  },
};
