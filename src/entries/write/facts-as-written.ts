import { figureDefinition } from '../../figures/registry.ts';
import { kindOfFigure } from '../../figures/unit-kind.ts';
import type { RuledValue } from '../../model/ruling.ts';
import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { Plain } from '../source/source.ts';

/**
 * As-ruled facts as a ruling writes them: a fact as its word or words, a figure in its SI unit to six digits, far closer
 * than the 0.1 % it is held to. Throws for a figure there is none of: rules that name one are not read.
 */
export function factsAsWritten(facts: Readonly<Record<string, RuledValue>>): Plain {
  return Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, written(id, value)]));
}

function written(id: string, value: RuledValue): Plain {
  if (typeof value === 'number') return figure(id, value);
  if (typeof value !== 'object') return String(value);
  return value.map((item) => (typeof item === 'number' ? figure(id, item) : item));
}

function figure(id: string, value: number): string {
  const definition = figureDefinition(id);
  if (definition === undefined) throw new Error(`There is no figure ${id} to write into a ruling.`);
  return formatQuantity(Number(value.toPrecision(6)), kindOfFigure(definition), definition.unit);
}
