import type { SortColumn } from './board-view.ts';

/** One aircraft of a board, as numbers and letters to find and sort it by. */
export interface BoardLine {
  readonly entry: string;
  /** Where it stands on the whole board, from 0. */
  readonly position: number;
  /** Numbers in SI and folded letters; a column it has nothing in is left out. */
  readonly values: ReadonlyMap<SortColumn, number | string>;
  /** Name and builders, in folded letters. */
  readonly letters: string;
  readonly builders: readonly string[];
  readonly control: string | null;
  /** The divisions it has a place in, each with its position there, from 0. */
  readonly divisions: ReadonlyMap<string, number>;
}
