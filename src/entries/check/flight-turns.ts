import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

/** Backing off takes turns out, and a flight leaves no more turns than it began with. */
export const checkFlightTurns: EntryCheck = (draft, source) =>
  (draft.flights ?? []).flatMap((flight, index) => {
    const problems: Problem[] = [];
    const compare = (
      key: 'wound-to' | 'turns-left',
      wrong: (other: number, turns: number) => boolean,
      why: string,
    ) => {
      const others = flight?.[key] ?? [];
      const turns = flight?.turns ?? [];
      const at = others.findIndex((other, place) => {
        const launched = turns.length === 1 ? turns[0] : turns[place];
        return other !== null && launched != null && wrong(other.value, launched.value);
      });
      const other = others[at];
      const launched = turns.length === 1 ? turns[0] : turns[at];
      if (other == null || launched == null) return;
      const path = ['flights', index, key, ...(others.length === 1 ? [] : [at])];
      problems.push(
        problemAt(source, path, 'value', 'turns-disagree', {
          message: `${fieldName(source, path)} is "${other.written}", but \`turns\` is "${launched.written}": ${why}. Correct the wrong one.`,
          found: other.written,
          related: relatedAt(
            source,
            ['flights', index, 'turns', ...(turns.length === 1 ? [] : [at])],
            'the turns at launch stand here',
          ),
        }),
      );
    };
    compare('wound-to', (other, turns) => other < turns, 'backing off can only take turns out');
    compare('turns-left', (other, turns) => other > turns, 'no more can be left than there were at launch');
    return problems;
  });
