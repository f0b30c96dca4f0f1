import type { TextForm } from '../schema/text-form.ts';

/** One key of a map in a content file, with what it says of itself. */
export interface Field {
  readonly key: string;
  readonly title: string;
  readonly description: string;
  /** As one would write it in the file. */
  readonly example: string;
  readonly required: boolean;
  readonly shape: Shape;
}

/** What may stand in a field. */
export type Shape =
  | TextForm
  | {
      readonly kind: 'map';
      readonly fields: readonly Field[];
      /** What any key besides stands for, where other keys may stand: their names are a matter of meaning. */
      readonly others: Shape | null;
    }
  | {
      readonly kind: 'list';
      readonly of: Shape;
      readonly least: number;
      /** Null where nothing limits their number. */
      readonly most: number | null;
      /** Whether one item may stand without the list around it. */
      readonly orOne: boolean;
    }
  /** One of several shapes. */
  | { readonly kind: 'either'; readonly shapes: readonly Shape[] };
