import type { Gathered } from '../folder/gathered.ts';
import type { Problem } from '../problems/problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';

/** One rule between files. */
export interface FolderCheck {
  readonly code: ProblemCode;
  /** Whose files it looks at. */
  readonly scope: 'site' | 'challenge' | 'entry' | 'ruling' | 'rubber';
  check(content: Gathered): Problem[];
}
