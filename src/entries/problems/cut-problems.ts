import type { SourceDocument } from '../source/source.ts';
import { problemAt } from './make-problem.ts';
import type { Problem } from './problem.ts';

/** Nobody corrects more at a time; a file of nothing but mistakes is not to keep everybody waiting. */
export const mostProblems = 500;

/**
 * The problems of one file, at most so many, errors before warnings and notes; then a problem that says that there are
 * more.
 */
export function cutProblems(source: SourceDocument, problems: readonly Problem[]): readonly Problem[] {
  const listed = problems.filter(({ code }) => code !== 'more-mistakes');
  if (listed.length <= mostProblems) return problems;
  const errors = listed.filter(({ severity }) => severity === 'error');
  const others = listed.filter(({ severity }) => severity !== 'error');
  const code = errors.length > mostProblems ? 'more-mistakes' : 'more-doubts';
  return [...[...errors, ...others].slice(0, mostProblems), more(source, code)];
}

function more(source: SourceDocument, code: 'more-mistakes' | 'more-doubts'): Problem {
  const what = code === 'more-mistakes' ? 'mistakes' : 'mistakes and doubts';
  return problemAt(source, [], 'value', code, {
    message: `The fields of this file have more than ${mostProblems} ${what}; the first ${mostProblems} are listed. Correct these, then check again.`,
  });
}
