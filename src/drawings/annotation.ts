import { type Box, overlap } from './box.ts';
import { type Label, type LabelPlace, labelBox, labelText } from './label.ts';
import type { Sheet } from './sheet.ts';
import { path } from './svg-text.ts';

/** One way to write a label: where it stands, and the lines that lead to it. */
export interface Placing {
  readonly place: LabelPlace;
  /** Path data of the lines; empty for a label alone. */
  readonly lines: string;
  /** The room of the line that must cross nothing but outlines. */
  readonly room: Box | null;
}

/** A label with the ways to write it, the best first. */
export interface Annotation {
  readonly label: Label;
  readonly placings: readonly Placing[];
}

/** What is on the paper already. Lines of dimensions may cross outlines, words nothing. */
export interface Taken {
  readonly solids: readonly Box[];
  readonly outlines: readonly Box[];
}

/** Each annotation in its first free place; one that has none is left out rather than written over something. */
export function placeAnnotations(annotations: readonly Annotation[], taken: Taken, sheet: Sheet): string {
  const solids = [...taken.solids];
  const parts: string[] = [];
  const paper: Box = { left: 0, top: 0, right: sheet.width, bottom: sheet.height };
  for (const { label, placings } of annotations) {
    for (const { place, lines, room } of placings) {
      const words = labelBox(label, place, sheet.paper.letter);
      const free =
        inside(words, paper) &&
        !solids.some((box) => overlap(box, words)) &&
        !taken.outlines.some((box) => overlap(box, words)) &&
        (room === null || (inside(room, paper) && !solids.some((box) => overlap(box, room))));
      if (!free) continue;
      solids.push(words, ...(room === null ? [] : [room]));
      if (lines !== '') parts.push(path('drawn-dimension', lines));
      parts.push(labelText(label, place));
      break;
    }
  }
  return parts.join('');
}

function inside(box: Box, paper: Box): boolean {
  return (
    box.left >= paper.left && box.right <= paper.right && box.top >= paper.top && box.bottom <= paper.bottom
  );
}
