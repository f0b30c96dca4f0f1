import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

/** A flight is not flown in a setup that there was not yet. */
export const checkFlightAfterSetup: EntryCheck = (draft, source) =>
  (draft.flights ?? []).flatMap((flight, index) => {
    const place = (draft.setups ?? []).findIndex((setup) => setup?.id != null && setup.id === flight?.setup);
    const from = draft.setups?.[place]?.from;
    const date = flight?.date?.date;
    if (from == null || date === undefined || date >= from) return [];
    const path = ['flights', index, 'setup'];
    return [
      problemAt(source, path, 'value', 'flight-before-setup', {
        message: `${fieldName(source, path)} is "${flight?.setup}", which holds from ${from} on, but the flight is dated ${date}. Correct the date, the day of the setup, or which setup was flown.`,
        found: flight?.setup ?? null,
        related: relatedAt(source, ['setups', place, 'from'], 'the setup holds from here'),
      }),
    ];
  });
