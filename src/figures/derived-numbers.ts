import { type DerivedNumber, evaluateDerived } from './evaluate.ts';
import type { Figure } from './figure.ts';
import type { Subject } from './subject.ts';

/** Numbers that belong together, and what they come to once each is a figure. */
export interface DerivedNumbers<T> {
  readonly numbers: readonly DerivedNumber[];
  /** Takes the figures in the order of the numbers. */
  readonly from: (figures: readonly Figure[]) => T;
}

/** Works them out for one subject. */
export function evaluateTogether<T>(subject: Subject, { numbers, from }: DerivedNumbers<T>): T {
  return from(evaluateDerived(subject, numbers));
}
