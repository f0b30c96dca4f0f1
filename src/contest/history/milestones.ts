import type { Challenge } from '../../model/challenge.ts';
import type { AcceptedFlight } from './accepted-flight.ts';

/** A time the organiser named, with who passed it. */
export interface Milestone {
  /** Seconds. */
  readonly time: number;
  readonly label: string;
  /** Null where nobody has passed it. */
  readonly first: AcceptedFlight | null;
  /** How many aircraft passed it. */
  readonly entries: number;
}

/** The milestones of a challenge, the shortest first. A time that equals a milestone passes it. */
export function milestonesPassed(
  milestones: Challenge['milestones'],
  inOrder: readonly AcceptedFlight[],
): readonly Milestone[] {
  return [...milestones]
    .sort((a, b) => a.time - b.time)
    .map(({ time, label }) => {
      const passed = inOrder.filter(({ seconds }) => seconds >= time);
      return {
        time,
        label,
        first: passed[0] ?? null,
        entries: new Set(passed.map(({ entry }) => entry)).size,
      };
    });
}
