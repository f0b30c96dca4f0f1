import { significant } from '../../quantities/decimal.ts';
import type { AcceptedFlight } from './accepted-flight.ts';

/** A flight that beat all before it. */
export interface Step {
  readonly flight: AcceptedFlight;
  readonly value: number;
  /** By how much it beat the one before; null for the first. */
  readonly gain: number | null;
}

/**
 * How the best grew: of flights in the order flown, those that beat all before them. An equal one does not replace: the
 * first holds. A flight without a value sets nothing.
 */
export function progressOf(
  inOrder: readonly AcceptedFlight[],
  measure: (flight: AcceptedFlight) => number | null,
): readonly Step[] {
  const steps: Step[] = [];
  for (const flight of inOrder) {
    const value = measure(flight);
    const best = steps.at(-1)?.value ?? null;
    if (value === null || (best !== null && value <= best)) continue;
    steps.push({ flight, value, gain: best === null ? null : significant(value - best) });
  }
  return steps;
}

/** The progress of the best official time, s. */
export function progressOfTime(inOrder: readonly AcceptedFlight[]): readonly Step[] {
  return progressOf(inOrder, ({ seconds }) => seconds);
}

/** The progress of the largest span that reached the target, m; without a target any accepted flight will do. */
export function progressOfSpan(inOrder: readonly AcceptedFlight[], hasTarget: boolean): readonly Step[] {
  return progressOf(inOrder, ({ span, reachedTarget }) =>
    hasTarget && !reachedTarget ? null : (span?.value ?? null),
  );
}
