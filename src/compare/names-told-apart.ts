import type { ComparedAircraft } from './aircraft.ts';

type Named = Pick<ComparedAircraft, 'id' | 'name' | 'challenge'>;

/**
 * The aircraft with names that tell them apart: where two have the same, the challenge is added, and where that is the
 * same, too, the id.
 */
export function withNamesToldApart<T extends Named>(aircraft: readonly T[]): T[] {
  const twice = (one: T, same: (other: T) => boolean) =>
    aircraft.some((other) => other !== one && same(other));
  return aircraft.map((one) => {
    const sameName = (other: T) => other.name === one.name;
    if (!twice(one, sameName)) return one;
    const sameChallenge = (other: T) => sameName(other) && other.challenge.title === one.challenge.title;
    return { ...one, name: `${one.name}, ${twice(one, sameChallenge) ? one.id : one.challenge.title}` };
  });
}
