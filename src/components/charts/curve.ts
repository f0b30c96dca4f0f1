import type { LineChart, OtherUnit } from '../../charts/line-chart.ts';
import { toUnit } from '../../quantities/format.ts';
import type { Kind } from '../../quantities/quantity.ts';
import type { InBoth } from '../measure.ts';
import type { UnitPair } from '../units-shown.ts';

/** A curve of the bench as the page shows it: chart, what it means, and its numbers. */
export interface Curve {
  /** Unique on its page. */
  readonly id: string;
  /** Short, above the chart, such as a file name. */
  readonly caption: string;
  readonly title: string;
  readonly description: string;
  readonly chart: LineChart;
  /** What stands below it; empty where nothing needs to be said. */
  readonly notes: readonly InBoth[];
  readonly heads: readonly InBoth[];
  readonly rows: readonly (readonly InBoth[])[];
}

/** The same text in both systems of units. */
export function same(text: string): InBoth {
  return { metric: text, imperial: text };
}

/** How many imperial units one metric unit of a pair is. */
export function imperialPer(kind: Kind, { metric, imperial }: UnitPair): number {
  return toUnit(1, kind, imperial) / toUnit(1, kind, metric);
}

/** The axis of a pair's imperial unit. */
export function imperialAxis(label: string, kind: Kind, units: UnitPair): OtherUnit {
  return { label, per: imperialPer(kind, units) };
}

/** A number that stands in metric units, in both. */
export function numberInBoth(
  value: number,
  per: number,
  metricPlaces: number,
  imperialPlaces: number,
): InBoth {
  return { metric: value.toFixed(metricPlaces), imperial: (value * per).toFixed(imperialPlaces) };
}
