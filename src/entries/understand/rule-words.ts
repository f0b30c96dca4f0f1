import { parseLimit } from '../../contest/rules/limit.ts';
import { figureDefinition, figuresOfModel } from '../../figures/registry.ts';
import { kindOfFigure } from '../../figures/unit-kind.ts';
import type { Limit, TieBreak } from '../../model/challenge.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { type Reading, refused, taken } from '../schema/leaf.ts';

const idsOfModel = figuresOfModel.map(({ id }) => id);

const someFigures = 'a figure of the model, such as span or flying-mass';

/** A figure that rules may name: one of the model. */
export function readFigure(id: string): Reading<{ readonly id: string; readonly kind: Kind }> {
  const definition = figureDefinition(id);
  if (definition?.of === 'model') return taken({ id, kind: kindOfFigure(definition) });
  if (definition !== undefined)
    return refused(
      'figure-not-of-model',
      `"${id}" is a figure of a ${definition.of}; rules may use figures of the model only, so that places do not rest on places.`,
      id,
      someFigures,
    );
  const near = didYouMean(id, idsOfModel);
  // Who is near to none of them needs to see them all.
  const accepted = near === null ? `a figure of the model: ${idsOfModel.join(', ')}` : someFigures;
  return refused('unknown-figure', `"${id}" is not a figure.`, id, accepted, near ?? undefined);
}

/** A limit in words on a quantity of a kind. */
export function readLimit(sentence: string, kind: Kind): Reading<Limit> {
  return parseLimit(sentence, kind);
}

/** A step of the tie-break. */
export function readTieBreak(step: string): Reading<TieBreak> {
  const words = step.trim().replace(/\s+/g, ' ');
  if (words === 'next-best-flight') return taken({ kind: 'next-best-flight' });
  if (words === 'earlier flight') return taken({ kind: 'earlier-flight' });
  const [, prefers, figure] = /^(larger|smaller) (\S+)$/.exec(words) ?? [];
  if (figure !== undefined && (prefers === 'larger' || prefers === 'smaller')) {
    const known = readFigure(figure);
    if (known.ok) return taken({ kind: 'figure', figure, prefers });
    const { suggestion } = known.fault;
    return {
      ok: false,
      fault: { ...known.fault, ...(suggestion !== undefined && { suggestion: `${prefers} ${suggestion}` }) },
    };
  }
  const near = didYouMean(words, [
    'next-best-flight',
    'earlier flight',
    'larger span',
    'smaller flying-mass',
  ]);
  return refused(
    'unknown-tie-break',
    `"${step}" is not a step of a tie-break.`,
    step,
    'next-best-flight, earlier flight, or larger or smaller and a figure of the model, such as larger span',
    near ?? undefined,
  );
}
