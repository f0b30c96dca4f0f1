import { nameOfFigure } from '../../contest/rules/name-of-figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import { describeShape } from '../describe/describe-shape.ts';
import type { PlainMap } from './begin-file.ts';
import { type Beginning, type Group, isGiven } from './beginning.ts';

/** The limits of a challenge that cannot be checked without a group of questions, such as "flying mass: at most 5 kg". */
export function limitsOnGroup(
  { schema }: Beginning,
  { tells = [] }: Group,
  fields: PlainMap,
  { eligibility }: Pick<Challenge, 'eligibility'>,
): readonly string[] {
  const shape = describeShape(schema);
  return eligibility.flatMap((condition) => {
    if (condition.kind !== 'figure') return [];
    const told = tells.find(({ figure }) => figure === condition.figure);
    if (told === undefined || (told.unless !== undefined && isGiven(shape, fields, told.unless))) return [];
    return [`${nameOfFigure(condition.figure)}: ${condition.limit.written}`];
  });
}
