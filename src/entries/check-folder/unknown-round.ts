import type { Challenge } from '../../model/challenge.ts';
import type { Entry } from '../../model/entry.ts';
import type { Understood } from '../folder/content.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { nodeAt } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

/** What of the folder the check looks at. */
interface Looked {
  readonly entries: readonly Understood<Pick<Entry, 'challenge'>>[];
  readonly challenges: readonly { readonly value: Pick<Challenge, 'id' | 'title' | 'rounds'> }[];
}

/** A flight's round is one of its challenge; where the challenge has none, the flight names none. */
export const unknownRound = {
  code: 'unknown-round',
  scope: 'entry',
  check({ entries, challenges }: Looked): Problem[] {
    const byId = new Map(challenges.map(({ value }) => [value.id, value]));
    return entries.flatMap(({ value: entry, source }): Problem[] => {
      const challenge = byId.get(entry.challenge);
      const flights = nodeAt(source, ['flights']);
      if (challenge === undefined || flights?.kind !== 'list') return [];
      const rounds = challenge.rounds.map(({ id }) => id);
      return flights.items.flatMap((_, index): Problem[] => {
        const path = ['flights', index, 'round'];
        const written = nodeAt(source, path);
        if (written?.kind !== 'scalar' || rounds.includes(written.text)) return [];
        const near = didYouMean(written.text, rounds);
        const how =
          rounds.length === 0
            ? 'is flown without rounds: leave the round out.'
            : `has no such round; it has ${rounds.join(', ')}.${near === null ? '' : ` Did you mean "${near}"?`}`;
        return [
          problemAt(source, path, 'value', 'unknown-round', {
            message: `${fieldName(source, path)} is "${written.text}", but "${challenge.title}" ${how}`,
            found: written.text,
            accepted: rounds.length === 0 ? null : rounds.join(', '),
            suggestion: near,
          }),
        ];
      });
    });
  },
} satisfies FolderCheck;
