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

/** About how wide a label is, the wider of its two texts. */
export function labelWidth({ metric, imperial }: Label, letter: number): number {
  return 0.56 * letter * Math.max(metric.length, imperial.length);
}
