import type { Challenge } from '../../model/challenge.ts';
import type { Standing } from '../standing.ts';
import { type Scored, type Step, stepsFor } from './tie-break.ts';
import { withinTimingError } from './timing-error.ts';

/** A class of entries that share a place, and the steps that parted it from the classes above and below it. */
interface PlaceClass {
  readonly members: readonly Scored[];
  readonly parted: { readonly above: string | null; readonly below: string | null };
}

/**
 * The table of the scored entries: by score, among equal scores by the tie-breaks in turn, then with the place shared
 * (1, 2, 2, 4). Entries that share a place stand in the order of their ids; the order they come in does not matter.
 */
export function rank(
  challenge: Challenge,
  scored: readonly Scored[],
  divisionsOf: (entry: string) => readonly string[],
): readonly Standing[] {
  const bySameScore = new Map<number, Scored[]>();
  for (const one of scored) {
    const group = bySameScore.get(one.score.score);
    if (group === undefined) bySameScore.set(one.score.score, [one]);
    else group.push(one);
  }
  const standings: Standing[] = [];
  for (const score of [...bySameScore.keys()].sort((a, b) => b - a)) {
    const equal = bySameScore.get(score) ?? [];
    const steps = equal.length > 1 ? stepsFor(challenge, equal) : [];
    for (const { members, parted } of partInTurn(equal, steps)) {
      const place = standings.length + 1;
      for (const { entry, score: total } of [...members].sort(byEntry))
        standings.push({
          place,
          entry,
          divisions: divisionsOf(entry),
          score: total.score,
          u: total.u,
          provisional: total.provisional,
          flights: total.used.map(({ number }) => number),
          tieBreak: parted.above ?? parted.below,
          withinTimingErrorOf: [],
        });
    }
  }
  const near = withinTimingError(standings);
  return standings.map((standing, index) => ({ ...standing, withinTimingErrorOf: near[index] ?? [] }));
}

/** Applies the steps in turn; what one leaves together goes to the next. */
function partInTurn(equal: readonly Scored[], steps: readonly Step[]): readonly PlaceClass[] {
  const [step, ...later] = steps;
  if (step === undefined || equal.length < 2)
    return [{ members: equal, parted: { above: null, below: null } }];
  const parts = step.part(equal).map((part) => partInTurn(part, later));
  return parts.flatMap((classes, part) =>
    classes.map(({ members, parted }, index) => ({
      members,
      parted: {
        above: parted.above ?? (index === 0 && part > 0 ? step.name : null),
        below: parted.below ?? (index === classes.length - 1 && part < parts.length - 1 ? step.name : null),
      },
    })),
  );
}

function byEntry(a: Scored, b: Scored): number {
  return a.entry < b.entry ? -1 : a.entry > b.entry ? 1 : 0;
}
