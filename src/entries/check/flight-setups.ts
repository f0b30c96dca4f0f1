import { didYouMean } from '../problems/did-you-mean.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { inWords } from '../schema/word-field.ts';
import type { EntryCheck } from './entry-check.ts';

/** More setups than this are not listed in a message. */
const mostNamed = 12;

/** A setup that a flight names is one of the entry's. */
export const checkFlightSetups: EntryCheck = (draft, source) => {
  const known = [...new Set(['none', ...(draft.setups ?? []).flatMap((setup) => setup?.id ?? [])])];
  const accepted = known.length <= mostNamed ? inWords(known) : 'none or the id of one of its setups';
  return (draft.flights ?? []).flatMap((flight, index) => {
    if (flight?.setup === undefined || known.includes(flight.setup)) return [];
    const path = ['flights', index, 'setup'];
    const near = didYouMean(flight.setup, known);
    const question = near === null ? '' : ` Did you mean "${near}"?`;
    return [
      problemAt(source, path, 'value', 'unknown-setup', {
        message: `${fieldName(source, path)}: the entry has no setup "${flight.setup}". Write ${accepted}, or leave it out: then the date decides.${question}`,
        found: flight.setup,
        accepted,
        suggestion: near,
      }),
    ];
  });
};
