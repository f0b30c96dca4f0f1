import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { designsOf } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

/** A stabiliser on board makes a model guided. */
export const checkStabiliser: EntryCheck = (draft, source) =>
  designsOf(draft).flatMap(({ design, wrote, at }) => {
    if (design.control !== 'free' || !design.onboard?.includes('stabiliser')) return [];
    if (!wrote('control', 'onboard')) return [];
    const path = at('control');
    return [
      problemAt(source, path, 'value', 'stabiliser-is-guided', {
        message: `${fieldName(source, path)} is "free", but a stabiliser is on board: a sensor that moves a surface makes the model guided. Write "guided", or take the stabiliser out of \`onboard\`.`,
        found: 'free',
        accepted: 'guided',
        suggestion: 'guided',
        related: relatedAt(
          source,
          [...at('onboard'), design.onboard.indexOf('stabiliser')],
          'the stabiliser stands here',
        ),
      }),
    ];
  });
