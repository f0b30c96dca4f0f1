import type { Shape } from '../../entries/describe/field.ts';
import { parseNumber } from '../../quantities/number.ts';
import { parseQuantity } from '../../quantities/parse.ts';
import type { Kind } from '../../quantities/quantity.ts';

/** How a text was understood: as a number in the SI unit of its kind. */
export interface ReadBack {
  readonly written: string;
  readonly kind: Kind;
  readonly value: number;
  /** Standard uncertainty where the text states one; null where it was left to what such a thing is measured with. */
  readonly u: number | null;
}

/** The shape of what stands in a map or a list; null where the shape knows no such place. */
export function shapeWithin(shape: Shape | null, step: string | number): Shape | null {
  if (shape === null) return null;
  switch (shape.kind) {
    case 'map':
      return shape.fields.find(({ key }) => key === step)?.shape ?? shape.others;
    case 'list':
      return typeof step === 'number' ? shape.of : shapeWithin(shape.of, step);
    case 'either':
      return shape.shapes.map((one) => shapeWithin(one, step)).find((inner) => inner !== null) ?? null;
    default:
      return null;
  }
}

/** The number that a text of a shape was understood as; null for a text that is no number, or none that can be read. */
export function readBack(text: string, shape: Shape | null): ReadBack | null {
  if (shape === null) return null;
  switch (shape.kind) {
    case 'quantity':
      return quantity(text, shape.of, shape.negative);
    case 'balance':
      return quantity(text, 'length', true) ?? quantity(text, 'share', true);
    case 'number': {
      const number = parseNumber(text);
      return number.ok ? { written: text, kind: 'number', value: number.value.value, u: null } : null;
    }
    case 'list':
      return readBack(text, shape.of);
    case 'either':
      return shape.shapes.map((one) => readBack(text, one)).find((read) => read !== null) ?? null;
    default:
      return null;
  }
}

function quantity(text: string, kind: Kind, negative: boolean): ReadBack | null {
  const parsed = parseQuantity(text, kind, negative ? { negative } : {});
  if (!parsed.ok) return null;
  const stated = /±|\+ ?\/ ?-|\+-/.test(text);
  return { written: text, kind, value: parsed.value.value, u: stated ? parsed.value.u : null };
}
