import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';
import type { ChallengeCheck } from './challenge-check.ts';

/** Rounds go with the method rounds, which needs them and knows neither a maximum of the flying nor a scale. */
export const checkRounds: ChallengeCheck = (draft, source) => {
  const method = draft.scoring?.method ?? 'best';
  const problems: Problem[] = [];
  if (method === 'rounds') {
    if (draft.rounds === undefined || draft.rounds.length === 0)
      problems.push(
        problemAt(source, ['scoring', 'method'], 'value', 'rounds-missing', {
          message:
            '`scoring.method` is "rounds", but there are no rounds. Write them like `rounds: [{ id: r1, maximum: 180 s }]`, or another method.',
          found: 'rounds',
          accepted: '`rounds` with at least one round',
          suggestion: 'rounds: [{ id: r1, maximum: 180 s }]',
        }),
      );
    if (draft.flying?.maximum !== undefined)
      problems.push(
        withoutRounds(
          source,
          ['flying', 'maximum'],
          'each round has a `maximum` of its own; take this one out',
        ),
      );
    if (draft.scoring?.scale !== undefined)
      problems.push(
        withoutRounds(source, ['scoring', 'scale'], 'scores of rounds are not scaled; take it out'),
      );
  } else if (draft.rounds !== undefined && draft.rounds.length > 0) {
    problems.push(
      problemAt(source, ['rounds'], 'key', 'rounds-not-used', {
        message: `\`rounds\` are given, but \`scoring.method\` is "${method}". Write \`method: rounds\` there, or take the rounds out.`,
        found: method,
        accepted: '`method: rounds`',
        suggestion: 'scoring: { method: rounds }',
      }),
    );
  }
  if (draft.scoring?.flights !== undefined && method !== 'sum' && method !== 'mean')
    problems.push(
      problemAt(source, ['scoring', 'flights'], 'key', 'flights-not-used', {
        message: `\`scoring.flights\` is "${draft.scoring.flights}", but the method "${method}" does not use it. Take it out, or write \`method: sum\` or \`method: mean\`.`,
        found: String(draft.scoring.flights),
        accepted: '`method: sum` or `method: mean`',
      }),
    );
  return problems;
};

function withoutRounds(source: SourceDocument, path: readonly string[], why: string): Problem {
  return problemAt(source, path, 'key', 'not-with-rounds', {
    message: `\`${path.join('.')}\` has no meaning with rounds: ${why}.`,
    found: path.join('.'),
  });
}
