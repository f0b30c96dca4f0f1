import type { Challenge } from '../../model/challenge.ts';
import type { FrozenRecord } from '../frozen/frozen.ts';
import type { FlightInDivisions } from './accepted-flight.ts';
import { progressOfSpan, progressOfTime, type Step } from './progress.ts';

/**
 * The records of a challenge among its flights in the order flown, of all entries (division null) and of each division:
 * the longest official time, and the largest span that reached the target. Without a target any flight will do for the
 * span. Of equal ones the first flown holds.
 */
export function recordsAmong(
  { target, divisions }: Challenge,
  inOrder: readonly FlightInDivisions[],
): readonly FrozenRecord[] {
  return [null, ...divisions.map(({ id }) => id)].flatMap((division) => {
    const inside = inOrder.filter((flight) => division === null || flight.divisions.includes(division));
    return [
      ...recordOf('best-time', division, progressOfTime(inside)),
      ...recordOf('span', division, progressOfSpan(inside, target !== null)),
    ];
  });
}

/** The last step of a progress; none where nothing was reached. */
function recordOf(
  kind: FrozenRecord['kind'],
  division: string | null,
  steps: readonly Step[],
): readonly FrozenRecord[] {
  const last = steps.at(-1);
  if (last === undefined) return [];
  const { entry, number, flown } = last.flight;
  return [{ kind, division, value: last.value, entry, flight: number, date: flown.date }];
}
