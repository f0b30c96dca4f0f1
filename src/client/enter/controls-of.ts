import type { Field, Shape } from '../../entries/describe/field.ts';
import type { TextForm } from '../../entries/schema/text-form.ts';
import type { Path, Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';
import type { At, Control, Group } from './control.ts';
import { idOf } from './id-of.ts';
import { isInSight } from './in-sight.ts';
import { isPerMotor } from './per-motor.ts';
import { shortKey } from './put-field.ts';

/** Lists, by the ids of their paths, that show an empty part behind their last: one that is not written yet. */
export type Begun = ReadonlySet<string>;

/** What else than the text says which fields there are. */
export interface Around {
  readonly begun: Begun;
  /** How many kinds of motors the entry has. */
  readonly motors: number;
}

/** The fields of a form for the fields of a file, with what is written in each. */
export function controlsOf(
  fields: readonly Field[],
  written: Plain,
  around: Around,
  path: Path = [],
): Control[] {
  return fields.map((field) => {
    const value = childOf(written, field.key);
    return ofShape(
      { path: [...path, field.key], field },
      field.shape,
      value === '' ? undefined : value,
      around,
    );
  });
}

function ofShape(at: At, shape: Shape, written: Plain | undefined, around: Around): Control {
  switch (shape.kind) {
    case 'map':
      if (shape.others !== null && shape.fields.length === 0) return named(at, shape.others, written, around);
      return group(at, shape.fields, written, around) ?? odd(at);
    case 'list':
      return listed(at, shape, written, around);
    case 'either':
      return either(at, shape, written, around);
    default:
      return written === undefined || typeof written === 'string'
        ? ofText(at, shape, written ?? '')
        : odd(at);
  }
}

function ofText(at: At, form: TextForm, written: string): Control {
  if (form.kind === 'yes-no') return { ...at, kind: 'tick', written };
  if (form.kind === 'word') return { ...at, kind: 'choice', words: form.words, written };
  return { ...at, kind: 'line', form, written };
}

function group(at: At, fields: readonly Field[], written: Plain | undefined, around: Around): Group | null {
  if (written !== undefined && !isMap(written)) return null;
  const controls = controlsOf(fields, written ?? {}, around, at.path);
  const shown = (control: Control) => isInSight(control.path, control.field.required);
  return {
    ...at,
    kind: 'group',
    inSight: controls.filter(shown),
    folded: controls.filter((control) => !shown(control)),
  };
}

function listed(
  at: At,
  shape: Extract<Shape, { kind: 'list' }>,
  written: Plain | undefined,
  around: Around,
): Control {
  const items = written === undefined ? [] : isList(written) ? written : shape.orOne ? [written] : null;
  if (items === null) return odd(at);
  const { of } = shape;
  if (of.kind === 'map' || of.kind === 'either') {
    const more = around.begun.has(idOf(at.path)) || (at.field.required && items.length === 0);
    const groups = [...items, ...(more ? [undefined] : [])].map((item, index) =>
      itemGroup(at, of, item, index, around),
    );
    return groups.every((one) => one !== null)
      ? { ...at, kind: 'items', items: groups, most: shape.most, isBegun: around.begun.has(idOf(at.path)) }
      : odd(at);
  }
  if (of.kind === 'list' || !items.every((item) => typeof item === 'string')) return odd(at);
  return of.kind === 'word'
    ? { ...at, kind: 'ticks', words: of.words, written: items }
    : { ...at, kind: 'lines', form: of, written: items, motors: isPerMotor(at.path) ? around.motors : null };
}

function itemGroup(at: At, of: Shape, item: Plain | undefined, index: number, around: Around): Group | null {
  const map = of.kind === 'either' ? mapAmong(of.shapes) : of;
  if (map?.kind !== 'map') return null;
  return group({ ...at, path: [...at.path, index] }, map.fields, asMap(of, item), around);
}

/** Where one text may stand for a map, it is the field of it that says the same. */
function asMap(of: Shape, written: Plain | undefined): Plain | undefined {
  const short = shortKey(of);
  return typeof written === 'string' && short !== null ? { [short]: written } : written;
}

function either(
  at: At,
  shape: Extract<Shape, { kind: 'either' }>,
  written: Plain | undefined,
  around: Around,
): Control {
  const map = mapAmong(shape.shapes);
  const text = shape.shapes.find(({ kind }) => !['map', 'list', 'either'].includes(kind));
  const asText =
    text !== undefined && shortKey(shape) === null && (written === undefined || typeof written === 'string');
  if (asText) return ofShape(at, text, written, around);
  return map === undefined ? odd(at) : (group(at, map.fields, asMap(shape, written), around) ?? odd(at));
}

function mapAmong(shapes: readonly Shape[]): Extract<Shape, { kind: 'map' }> | undefined {
  return shapes.find((shape) => shape.kind === 'map');
}

function named(at: At, others: Shape, written: Plain | undefined, around: Around): Control {
  if (written !== undefined && !isMap(written)) return odd(at);
  if (others.kind === 'map' || others.kind === 'list' || others.kind === 'either') return odd(at);
  const rows = Object.entries(written ?? {}).map(([name, value]) =>
    ofShape(
      {
        path: [...at.path, name],
        field: { title: name, description: '', example: at.field.example, required: false },
      },
      others,
      value,
      around,
    ),
  );
  return { ...at, kind: 'named', rows };
}

function odd({ path, field }: At): Control {
  return { path, field, kind: 'odd' };
}

function childOf(written: Plain, key: string): Plain | undefined {
  return isMap(written) && Object.hasOwn(written, key) ? written[key] : undefined;
}
