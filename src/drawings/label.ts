import type { Box } from './box.ts';
import { escaped, tenth } from './svg-text.ts';

/** A text in both systems of units. */
export interface Label {
  readonly metric: string;
  readonly imperial: string;
}

/** Where a label stands, and what it is anchored by; turned a quarter, reading upwards, where it is upright. */
export interface LabelPlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly upright?: boolean;
}

/** A label as SVG text: both systems, of which the page shows one, or one text where they agree. */
export function labelText(label: Label, place: LabelPlace): string {
  if (label.metric === label.imperial) return textAt(label.metric, place, '');
  return textAt(label.metric, place, ' metric') + textAt(label.imperial, place, ' imperial');
}

function textAt(text: string, { x, y, anchor, upright }: LabelPlace, system: string): string {
  const turn = upright === true ? ` transform="rotate(-90 ${tenth(x)} ${tenth(y)})"` : '';
  return `<text class="drawn-text${system}" x="${tenth(x)}" y="${tenth(y)}" text-anchor="${anchor}"${turn}>${escaped(text)}</text>`;
}

/** How wide a letter is for its size, on average and a little more, in the typefaces of the page. */
export const letterWidth = 0.5;

/** The room a label takes, the wider of its two texts. */
export function labelBox(
  { metric, imperial }: Label,
  { x, y, anchor, upright }: LabelPlace,
  letter: number,
): Box {
  const length = letterWidth * letter * Math.max(metric.length, imperial.length);
  const before = anchor === 'start' ? 0 : anchor === 'middle' ? length / 2 : length;
  const [above, below] = [0.8 * letter, 0.25 * letter];
  return upright === true
    ? { left: x - above, right: x + below, top: y - (length - before), bottom: y + before }
    : { left: x - before, right: x - before + length, top: y - above, bottom: y + below };
}
