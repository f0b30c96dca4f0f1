import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Path } from '../source/source.ts';
import type { ChallengeCheck } from './challenge-check.ts';
import { relatedAt } from './first-of.ts';

interface Dated {
  readonly path: Path;
  readonly date: string;
}

/** A challenge opens, closes, takes reports and becomes final in this order; so does each round. */
export const checkDatesInOrder: ChallengeCheck = (draft, source) => {
  const dated = (path: Path, date: string | undefined): Dated[] =>
    date === undefined ? [] : [{ path, date }];
  const life = (['opens', 'closes', 'report-by', 'final'] as const).flatMap((key) =>
    dated([key], draft[key]),
  );
  const rounds = (draft.rounds ?? []).map((round, index) => [
    ...dated(['rounds', index, 'from'], round?.from),
    ...dated(['rounds', index, 'to'], round?.to),
  ]);
  return [life, ...rounds].flatMap((row) =>
    row.flatMap((later, index): Problem[] => {
      const earlier = row[index - 1];
      if (earlier === undefined || earlier.date <= later.date) return [];
      const before = String(earlier.path.at(-1));
      return [
        problemAt(source, later.path, 'value', 'dates-out-of-order', {
          message: `${fieldName(source, later.path)} is ${later.date}, before \`${before}\` on ${earlier.date}. Write a date that is not before it.`,
          found: later.date,
          accepted: `${earlier.date} or later`,
          related: relatedAt(source, earlier.path, `\`${before}\` stands here`),
        }),
      ];
    }),
  );
};
