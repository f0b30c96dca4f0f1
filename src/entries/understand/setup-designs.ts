import type * as z from 'zod';
import type { entry, setup } from '../schema/entry.ts';
import type { Path } from '../source/source.ts';
import type { Draft } from './draft.ts';

export type EntryFields = z.output<typeof entry>;
export type EntryDraft = Draft<EntryFields>;
export type SetupFields = z.output<typeof setup>;
export type SetupDraft = Draft<SetupFields>;

/** The part of an entry that setups may change. */
export type DesignDraft = Omit<SetupDraft, 'id' | 'from' | 'change'>;

/** The design in one setup, with the places where its values were written. */
export interface SetupDesign {
  /** Place in the list of setups; null for the entry as first written. */
  readonly index: number | null;
  readonly from: string | null;
  readonly design: DesignDraft;
  /** Whether this setup itself wrote any of these values, such as `wing.span`. */
  readonly wrote: (...fields: readonly string[]) => boolean;
  /** Where a value in force was written: in this setup, in one before it, or in the entry. */
  readonly at: (field: string) => Path;
}

/** The design as first written, then each setup laid over the one before it, by the day from which it holds. */
export function designsOf(draft: EntryDraft): readonly [SetupDesign, ...SetupDesign[]] {
  const order = inOrder(draft.setups ?? []);
  const first: SetupDesign = {
    index: null,
    from: null,
    design: draft,
    wrote: (...fields) => fields.some((field) => holds(draft, field)),
    at: (field) => field.split('.'),
  };
  const designs: [SetupDesign, ...SetupDesign[]] = [first];
  let design: DesignDraft = draft;
  order.forEach(({ index, changes }, place) => {
    design = laidOver(design, changes);
    designs.push({
      index,
      from: changes.from ?? null,
      design,
      wrote: (...fields) => fields.some((field) => holds(changes, field)),
      at: (field) => {
        const writer = order.slice(0, place + 1).findLast((setup) => holds(setup.changes, field));
        return writer === undefined ? first.at(field) : ['setups', writer.index, ...field.split('.')];
      },
    });
  });
  return designs;
}

/** The setups by the day from which they hold, in file order where equal. */
function inOrder(setups: readonly (SetupDraft | null)[]) {
  return setups
    .flatMap((changes, index) => (changes === null ? [] : [{ index, changes }]))
    .sort((a, b) => compare(a.changes.from ?? '', b.changes.from ?? ''));
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/**
 * Lays a setup over the design before it: maps merge key by key, lists and single values are replaced. Of wing area,
 * chord and panels, and of airframe and flying mass, naming one drops the others.
 */
export function laidOver<Design extends DesignDraft>(below: Design, changes: DesignDraft): Design {
  const { wing, mass, tailplane, fin, trim, structure } = changes;
  return {
    ...below,
    ...present(changes),
    ...(wing && { wing: { ...without(below.wing, wing, ['panels', 'area', 'chord']), ...present(wing) } }),
    ...(mass && {
      mass: {
        ...without(below.mass, mass, ['airframe', 'flying']),
        ...present(mass),
        ...(mass.parts && { parts: { ...below.mass?.parts, ...mass.parts } }),
      },
    }),
    ...(tailplane && { tailplane: { ...below.tailplane, ...present(tailplane) } }),
    ...(fin && { fin: { ...below.fin, ...present(fin) } }),
    ...(trim && { trim: { ...below.trim, ...present(trim) } }),
    ...(structure && { structure: { ...below.structure, ...structure } }),
  };
}

/** The map below without the rivals of what the setup names; whole where it names none of them. */
function without<Group extends object>(below: Group | undefined, named: object, rivals: readonly string[]) {
  if (!rivals.some((rival) => rival in named)) return below;
  return Object.fromEntries(Object.entries(below ?? {}).filter(([key]) => !rivals.includes(key)));
}

function present<Group extends object>(group: Group): Partial<Group> {
  return Object.fromEntries(
    Object.entries(group).filter(([, value]) => value !== undefined),
  ) as Partial<Group>;
}

function holds(group: object, field: string): boolean {
  let at: unknown = group;
  for (const key of field.split('.')) {
    if (typeof at !== 'object' || at === null || !(key in at)) return false;
    at = (at as Readonly<Record<string, unknown>>)[key];
  }
  return at !== undefined;
}
