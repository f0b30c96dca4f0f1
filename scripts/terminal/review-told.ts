import { formatSeconds } from '../../src/quantities/format.ts';

/** How a text that somebody wrote is set where it is printed, so that it can be nothing but a text there. */
export type Quote = (text: string) => string;

/** A list of lines, or a table; both may have a heading. */
export type ReviewPart =
  | { readonly heading: string | null; readonly lines: readonly string[] }
  | {
      readonly heading: string | null;
      readonly columns: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

export interface ReviewSection {
  readonly title: string;
  /** What may be read later. */
  readonly folded: boolean;
  readonly parts: readonly ReviewPart[];
}

/** A review in words, the same for every way of printing. What people wrote is set in already. */
export interface ReviewTold {
  /** One sentence. */
  readonly gist: string;
  readonly sections: readonly ReviewSection[];
}

/** How what people wrote is set, and how many items of a list are told. */
export interface Telling {
  readonly quote: Quote;
  /** A sentence of ours that quotes what people wrote. */
  readonly sentence: Quote;
  readonly most: number;
}

/** A time or score in seconds, on one line. */
export function secondsTold(seconds: number): string {
  return formatSeconds(seconds, '0.01').replace(' ', '\u00a0');
}
