import type { LineStarts } from './line-index.ts';

/**
 * The front matter of one file as it was written: every scalar is text with its place, nothing is interpreted.
 * Offsets are UTF-16 units from the start of the file's text, front matter included, after a byte order mark is removed.
 */
export type SourceNode = SourceScalar | SourceList | SourceMap;

export interface SourceScalar {
  readonly kind: 'scalar';
  /** As written, quotes resolved; empty for a key without a value. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export interface SourceList {
  readonly kind: 'list';
  readonly items: readonly SourceNode[];
  readonly start: number;
  readonly end: number;
}

export interface SourceMap {
  readonly kind: 'map';
  readonly pairs: readonly { readonly key: SourceScalar; readonly value: SourceNode }[];
  readonly start: number;
  readonly end: number;
}

/** What zod is given: text, lists and maps without a prototype. */
export type Plain = string | readonly Plain[] | { readonly [key: string]: Plain };

export type Path = readonly (string | number)[];

/** One content file, split and read but not yet understood. */
export interface SourceDocument {
  /** Path as printed in problems, relative to the content folder, with `/`. */
  readonly file: string;
  readonly text: string;
  /** The same letter for letter: with its byte order mark, where it has one. */
  readonly written: string;
  /** Where its lines start, for places. */
  readonly lines: LineStarts;
  readonly root: SourceMap;
  /** What follows the front matter. */
  readonly body: string;
  /** Offset of the body in the text. */
  readonly bodyStart: number;
}
