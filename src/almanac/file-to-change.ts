import type { ChallengeState } from '../model/challenge.ts';
import type { Entrant } from './entrants.ts';

/**
 * The file of an entry, letter for letter, for a builder who adds a flight to it; null where it is not given out: nothing can be
 * added to a final challenge, nor to an aircraft that was taken out of its challenge, and the file of a junior may hold the name
 * that no page shows.
 *
 * @param juniors the handles of {@link juniorHandles}
 */
export function fileToChange(
  { read, contender: { entry, ruling } }: Entrant,
  state: ChallengeState,
  juniors: ReadonlySet<string>,
): string | null {
  if (state === 'final' || entry.withdrawn !== null || (ruling?.disqualified ?? null) !== null) return null;
  return entry.builders.some(({ handle }) => juniors.has(handle)) ? null : read.source.written;
}

/**
 * Everybody whom any file calls a junior. One is enough: where files differ, a name that is kept back can be given out later, and
 * one that was given out cannot be taken back.
 */
export function juniorHandles(entrants: readonly Entrant[]): ReadonlySet<string> {
  const named = entrants.flatMap(({ read, contender }) => [
    ...read.value.builders,
    ...contender.entry.builders,
  ]);
  return new Set(named.filter(({ junior }) => junior).map(({ handle }) => handle));
}
