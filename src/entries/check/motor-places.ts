import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

/** A distance from the centre line is a place on both sides, unless a side is given; the centre line itself is one. */
export const checkMotorPlaces: EntryCheck = (draft, source) =>
  designsOf(draft)
    .filter(({ wrote }) => wrote('motors'))
    .flatMap(({ design, at }) =>
      (design.motors ?? []).flatMap((motor, index): Problem[] => {
        const { count, side } = motor ?? {};
        const distances = (motor?.at ?? []).filter((distance) => distance !== null);
        if (count === undefined || distances.length === 0 || distances.length !== motor?.at?.length)
          return [];
        const places = distances.reduce(
          (sum, { value }) => sum + (value === 0 || side !== undefined ? 1 : 2),
          0,
        );
        // As many motors at each place is how several share one.
        if (count % places === 0) return [];
        const path = [...at('motors'), index, 'at'];
        const found = distances.map(({ written }) => written).join(', ');
        const both = places > distances.length ? ', each distance on both sides of the centre line' : '';
        const said = `${fieldName(source, path)} is "${found}", which makes ${counted(places, 'place')}${both}, but \`count\` is ${count}`;
        return places > count
          ? [
              problemAt(source, path, 'value', 'more-places-than-motors', {
                message: `${said}. Write each distance once for its two sides, give the \`side\` where the motors sit on one only, or correct the \`count\`.`,
                found,
                accepted: counted(count, 'place'),
              }),
            ]
          : [
              problemAt(source, path, 'value', 'fewer-places-than-motors', {
                message: `${said}. Write every distance, or correct the \`count\`.`,
                found,
                accepted: counted(count, 'place'),
              }),
            ];
      }),
    );

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}
