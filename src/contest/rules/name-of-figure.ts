import type { Figure } from '../../figures/figure.ts';
import { figureDefinition } from '../../figures/registry.ts';
import { kindOfFigure, kindOfUnit } from '../../figures/unit-kind.ts';
import type { Kind } from '../../quantities/quantity.ts';

/** The name of a figure inside a sentence, such as `wing loading`; its id in words where the registry has none. */
export function nameOfFigure(id: string): string {
  const name = figureDefinition(id)?.name ?? id.replaceAll('-', ' ');
  // A name that begins with an abbreviation keeps its capitals.
  return /^[A-Z][a-z]/.test(name) ? `${name[0]?.toLowerCase()}${name.slice(1)}` : name;
}

/** The kind in which people write a figure. */
export function kindOf(figure: Pick<Figure, 'id' | 'unit'>): Kind {
  const definition = figureDefinition(figure.id);
  return definition === undefined ? kindOfUnit(figure.unit) : kindOfFigure(definition);
}
