import type { Term } from './figure.ts';
import { type Formula, times } from './formula.ts';
import { type Given, shownCount, shownInput } from './given.ts';

/** True for the number of motors, with which the terms of a kind of motor begin. */
export function beginsMotors(term: Term): boolean {
  return term.from === 'count' && term.name === 'motors';
}

/**
 * The mass of all rubber with its numbers, in g, one part for each kind of motor; null where it was not simply weighed or
 * reckoned from strip and length.
 */
export function rubberParts(given: Given): readonly Formula[] | null {
  const groups = given.groups(beginsMotors);
  const [only] = given.inputs;
  if (groups.length === 0) return only === undefined ? null : [shownInput(only, 'g')];
  const parts = groups.flatMap((group) => {
    const skein = skeinFactors(group);
    const count = group.count('motors') ?? 1;
    if (skein === null) return [];
    const factors = count === 1 ? skein : [shownCount(count), ...skein];
    return [factors.length === 1 ? factors[0]! : times(...factors)];
  });
  return parts.length === groups.length ? parts : null;
}

/** The mass of one skein, or of all where an official weighed all, as factors in g; null where it is none of these. */
export function skeinFactors(group: Given): readonly Formula[] | null {
  const [first, density, width, thickness, more] = group.inputs;
  if (first === undefined || more !== undefined) return null;
  if (density === undefined) return first.quantity.kind === 'mass' ? [shownInput(first, 'g')] : null;
  const strands = group.count('strands');
  if (width === undefined || thickness === undefined || strands === null) return null;
  // g/cm³ · mm² · m are g.
  return [
    shownInput(density, 'g/cm3'),
    shownCount(strands),
    shownInput(width, 'mm'),
    shownInput(thickness, 'mm'),
    shownInput(first, 'm'),
  ];
}
