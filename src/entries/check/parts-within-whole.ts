import { formatQuantity } from '../../quantities/format-quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

/** The parts weigh no more than the airframe, or than the flying model where only that was weighed. */
export const checkPartsWithinWhole: EntryCheck = (draft, source) =>
  designsOf(draft).flatMap(({ design, wrote, at }): Problem[] => {
    const key = design.mass?.airframe === undefined ? 'flying' : 'airframe';
    const whole = design.mass?.[key];
    const parts = Object.values(design.mass?.parts ?? {}).filter((part) => part !== undefined);
    if (whole === undefined || parts.length === 0 || !wrote('mass')) return [];
    const sum = parts.reduce((total, { value }) => total + value, 0);
    const u = Math.hypot(whole.u, ...parts.map((part) => part.u));
    if (sum <= whole.value + 2 * u) return [];
    const path = at('mass.parts');
    const together = formatQuantity(Number(sum.toPrecision(4)), 'mass', 'g');
    return [
      problemAt(source, path, 'key', 'parts-heavier-than-whole', {
        message: `${fieldName(source, path)} weigh ${together} together, more than the "${whole.written}" of \`${key}\`. Weigh again and correct the wrong one.`,
        found: together,
        accepted: `at most ${whole.written}`,
        related: relatedAt(source, at(`mass.${key}`), 'the whole stands here'),
      }),
    ];
  });
