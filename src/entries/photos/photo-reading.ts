import type { ProblemFields } from '../problems/make-problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';

/** What is wrong with a picture; the place is that of the field that names it. */
export interface PhotoFault {
  readonly code: ProblemCode;
  readonly fields: ProblemFields;
}

export interface PhotoReading {
  /** Null where the picture cannot be published. */
  readonly picture: { readonly hash: string; readonly width: number; readonly height: number } | null;
  readonly faults: readonly PhotoFault[];
}
