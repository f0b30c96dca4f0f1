import { didYouMean } from '../problems/did-you-mean.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { EntryCheck } from './entry-check.ts';

const massKeys = ['airframe', 'flying', 'parts'];

/** The airframe or the flying mass is given. */
export const checkMassGiven: EntryCheck = (draft, source) => {
  const written = source.root.pairs.find(({ key }) => key.text === 'mass')?.value;
  if (written?.kind !== 'map' || written.pairs.length === 0) return [];
  if (written.pairs.some(({ key }) => key.text === 'airframe' || key.text === 'flying')) return [];
  // A key that is nearly one of them is told to be misspelt, and that is all that is wrong.
  if (written.pairs.some(({ key }) => ['airframe', 'flying'].includes(didYouMean(key.text, massKeys) ?? '')))
    return [];
  if (draft.mass === undefined) return [];
  return [
    problemAt(source, ['mass'], 'key', 'mass-missing', {
      message:
        '`mass` needs the mass of the whole model. Write `airframe`, ready to fly but without rubber, such as `airframe: 612 g`, or `flying`, with its rubber, such as `flying: 643 g`.',
      accepted: '`airframe` or `flying`',
      suggestion: 'airframe: 612 g',
    }),
  ];
};
