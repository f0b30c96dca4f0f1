import type { ChartFrame } from './chart-parts.ts';
import type { PlacedLevel } from './levels.ts';

/** The line of a time with a name; its words are drawn last, over everything else. */
export function drawLevel({ kind, y }: PlacedLevel, { left, right }: ChartFrame): string {
  return `<path class="chart-level ${kind}" d="M${left} ${y}H${right}"/>`;
}
