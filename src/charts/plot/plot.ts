import type { Better } from './frontier.ts';

/** One aircraft in a plot, in the units of the axes. */
export interface PlotPoint {
  /** Unique in its plot. */
  readonly id: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** Standard uncertainty of each, 0 where there is none. */
  readonly ux: number;
  readonly uy: number;
  /** Of the division that is told apart. */
  readonly marked: boolean;
  /** Its time waits for a ruling: drawn hollow, and never on the frontier. */
  readonly waiting: boolean;
}

export interface PlotAxis {
  /** Name and unit. */
  readonly label: string;
  readonly logarithmic: boolean;
  /** Which end is the better one; null where neither is. */
  readonly better: Better | null;
}

/** What a plot says, before anybody knows where it stands on paper. On a logarithmic axis every value is above zero. */
export interface Plot {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly points: readonly PlotPoint[];
  /** True where the ± of each value is drawn. */
  readonly bars: boolean;
}
