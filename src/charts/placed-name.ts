import type { Point } from './thinned.ts';

/** Words and where they stand. */
export interface PlacedName {
  readonly text: string;
  readonly at: Point;
  readonly anchor: 'start' | 'end';
}

/** The room that something takes up in a drawing; y grows downwards. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Words closer than this would run into one another, on a narrow screen too. */
const lineHeight = 20;
/** About, of the letters of a chart. */
const letterWidth = 7.5;

/** About how wide words are in a chart. */
export function widthOfName(text: string): number {
  return letterWidth * [...text].length;
}

/** The room that words take up. */
export function boxOf({ text, at, anchor }: PlacedName): Box {
  const width = widthOfName(text);
  const left = anchor === 'start' ? at.x : at.x - width;
  return { left, right: left + width, top: at.y - lineHeight + 4, bottom: at.y + 4 };
}

/** Whether two boxes share any room. */
export function meet(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Words cut to so many letters, with an ellipsis where any are missing. */
export function clippedName(text: string, longest: number): string {
  const letters = [...text];
  return letters.length <= longest
    ? text
    : `${letters
        .slice(0, longest - 1)
        .join('')
        .trimEnd()}…`;
}
