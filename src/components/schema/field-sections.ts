import { acceptedShape } from '../../entries/describe/accepted-shape.ts';
import type { Field, Shape } from '../../entries/describe/field.ts';

/** One field in a table of fields. */
export interface FieldRow {
  /** Its keys from the top of the file, such as `wing.panels`: the mark of its line on the page. */
  readonly path: string;
  readonly field: Field;
  /** What may be written, in words that follow "Write". */
  readonly accepted: string;
  /** The path of the section that lists the fields inside it; null where there are none. */
  readonly inside: string | null;
}

/** A map of a file: the file itself, or what stands inside one of its fields. */
export interface FieldSection {
  /** Empty for the file itself. */
  readonly path: string;
  /** Whose fields these are; null for the file itself. */
  readonly field: Field | null;
  readonly rows: readonly FieldRow[];
  /** What may stand under the id of any figure of the model, in words that follow "Write"; null where none may. */
  readonly figures: string | null;
}

type MapShape = Shape & { readonly kind: 'map' };

/**
 * The fields of a file as tables: first its own, then each map in it, in the order of the file. A map that was listed
 * before under another key, as the tailplane of a setup, is not listed again: its line leads to where it was.
 */
export function fieldSections(shape: Shape): FieldSection[] {
  const sections: FieldSection[] = [];
  const listed = new Map<string, string>();
  const list = (map: MapShape, path: string, field: Field | null): void => {
    const rows: FieldRow[] = [];
    const figures = map.others?.kind === 'limit' ? acceptedShape(map.others) : null;
    sections.push({ path, field, rows, figures });
    for (const inner of map.fields) {
      const innerPath = path === '' ? inner.key : `${path}.${inner.key}`;
      const nested = mapIn(inner.shape);
      const known = nested === null ? undefined : listed.get(JSON.stringify(nested));
      const inside = nested === null ? null : (known ?? innerPath);
      rows.push({ path: innerPath, field: inner, accepted: acceptedShape(inner.shape), inside });
      if (nested === null || known !== undefined) continue;
      listed.set(JSON.stringify(nested), innerPath);
      list(nested, innerPath, inner);
    }
  };
  const file = mapIn(shape);
  if (file !== null) list(file, '', null);
  return sections;
}

/** The map with fields of its own in a shape, through lists and alternatives; null where there is none. */
function mapIn(shape: Shape): MapShape | null {
  if (shape.kind === 'list') return mapIn(shape.of);
  if (shape.kind === 'either') return shape.shapes.map(mapIn).find((map) => map !== null) ?? null;
  if (shape.kind !== 'map') return null;
  return shape.fields.length > 0 ? shape : shape.others === null ? null : mapIn(shape.others);
}
