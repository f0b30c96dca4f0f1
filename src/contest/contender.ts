import type { Figure, FigureSet } from '../figures/figure.ts';
import type { Entry, Flight } from '../model/entry.ts';
import type { Inspection, Ruling } from '../model/ruling.ts';

/**
 * One entry as the contest sees it. Figures and seals are worked out elsewhere and arrive as arguments, so that
 * judging needs neither files nor hashing.
 */
export interface Contender {
  readonly entry: Entry;
  readonly ruling: Ruling | null;
  /** True where the builder (for a team: every builder) is a junior, the builders folder considered. */
  readonly junior: boolean;
  /** Seal of each flight as it is written now, by flight number. */
  readonly seals: ReadonlyMap<number, string>;
  /** Figures of the model in a setup (id, null = first written), inspections included. */
  readonly modelFigures: (setup: string | null) => FigureSet;
  /**
   * The same with the flight's own mass: what limits, divisions and scale are tested against. With `inspections`, the
   * figures as they would be if only these had been made (none: the builder's own numbers): so it can be told whether
   * an official or the builder moved a figure after a ruling.
   */
  readonly figuresAtFlight: (
    flight: Flight,
    setup: string | null,
    inspections?: readonly Inspection[],
  ) => FigureSet;
}

export type { Figure };
