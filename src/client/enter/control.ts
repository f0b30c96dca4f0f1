import type { Field } from '../../entries/describe/field.ts';
import type { TextForm } from '../../entries/schema/text-form.ts';
import type { Path } from '../../entries/source/source.ts';

/** What a field says of itself, and where it stands. */
export interface At {
  readonly path: Path;
  readonly field: Pick<Field, 'title' | 'description' | 'example' | 'required'>;
}

/** One field of the form, as it stands in the text: what is shown for it, and how it is changed. */
export type Control =
  /** One text. */
  | (At & { readonly kind: 'line'; readonly form: TextForm; readonly written: string })
  /** One of some words; what else was written stands among them. */
  | (At & { readonly kind: 'choice'; readonly words: readonly string[]; readonly written: string })
  /** Yes, where it is ticked. */
  | (At & { readonly kind: 'tick'; readonly written: string })
  /** Any of some words. */
  | (At & { readonly kind: 'ticks'; readonly words: readonly string[]; readonly written: readonly string[] })
  /** Any number of texts, with room for one more; or one for each of so many motors, and then with room for no other. */
  | (At & {
      readonly kind: 'lines';
      readonly form: TextForm;
      readonly written: readonly string[];
      readonly motors: number | null;
    })
  /** Several fields. */
  | (At & {
      readonly kind: 'group';
      readonly inSight: readonly Control[];
      readonly folded: readonly Control[];
    })
  /** Any number of such groups. */
  | (At & {
      readonly kind: 'items';
      readonly items: readonly Group[];
      readonly most: number | null;
      /** Whether the last of them was added and is not in the text yet. */
      readonly isBegun: boolean;
    })
  /** Texts under names of the builder's own. */
  | (At & { readonly kind: 'named'; readonly rows: readonly Control[] })
  /** What stands in the text in a shape that has no fields here: shown, and changed in the text. */
  | (At & { readonly kind: 'odd' });

export type Group = Extract<Control, { kind: 'group' }>;
