import { figuresOfModel } from '../../figures/registry.ts';
import { kindOfFigure } from '../../figures/unit-kind.ts';
import type { JsonSchema } from './json-schema.ts';
import { limitPattern } from './quantity-pattern.ts';

/** A limit in words for each figure of the model, under its id: rules may name these and no other. */
export function limitsOnFigures(): { readonly [figure: string]: JsonSchema } {
  return Object.fromEntries(
    figuresOfModel.map((definition) => [
      definition.id,
      {
        title: definition.name,
        description: `A limit in words. ${definition.explanation}`,
        type: 'string',
        pattern: limitPattern(kindOfFigure(definition)),
      },
    ]),
  );
}
