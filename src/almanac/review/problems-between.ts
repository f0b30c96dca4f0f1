import type { Problem } from '../../entries/problems/problem.ts';
import type { Sides } from './side.ts';

export interface ProblemsBetween {
  /** Not there before. */
  readonly fresh: readonly Problem[];
  /** There before and no more. */
  readonly gone: readonly Problem[];
}

/** What the checks say now and did not before, and the other way round. A problem that only moved to another line is the same. */
export function problemsBetween({ before, after }: Sides): ProblemsBetween {
  const [was, is] = [before.almanac.problems, after.almanac.problems];
  return { fresh: without(is, was), gone: without(was, is) };
}

function without(problems: readonly Problem[], others: readonly Problem[]): readonly Problem[] {
  const left = new Map<string, number>();
  for (const other of others) left.set(keyOf(other), (left.get(keyOf(other)) ?? 0) + 1);
  return problems.filter((problem) => {
    const known = left.get(keyOf(problem)) ?? 0;
    left.set(keyOf(problem), known - 1);
    return known <= 0;
  });
}

function keyOf({ file, code, message }: Problem): string {
  return JSON.stringify([file, code, message]);
}
