import type { PlanShape } from '../drawings/plan-shape.ts';

// One aircraft as it is compared: plain data that survives JSON, so that build and browser compare alike. Numbers are in
// SI; every text is ready to be shown, in both systems of units.

/** A text in both systems of units; the same text where both use one unit. */
export interface Shown {
  readonly metric: string;
  readonly imperial: string;
}

/** A number with its standard uncertainty. */
export interface Measured {
  readonly value: number;
  readonly u: number;
}

/** A number with its text, or what it would need. */
export type ComparedNumber = (Measured & { readonly shown: Shown }) | { readonly absent: string };

/** One figure; the basis in words. */
export type ComparedFigure = { readonly id: string; readonly name: string } & (
  | (Measured & { readonly shown: Shown; readonly basis: string })
  | { readonly absent: string }
);

/** What was written of one thing, such as "Strands: 6". */
export interface ComparedFact {
  readonly label: string;
  readonly shown: Shown;
}

/** Facts that belong together. */
export interface ComparedFacts {
  readonly title: string;
  readonly facts: readonly ComparedFact[];
}

/** What the time of a flight is made of: time = use × height / sink. */
export interface ComparedTime {
  /** The time as a sentence tells it, without its ±; empty where nobody flew. */
  readonly told: string;
  readonly time: ComparedNumber;
  readonly use: ComparedNumber;
  readonly height: ComparedNumber;
  readonly sink: ComparedNumber;
}

/** Everything a comparison says of one aircraft. */
export interface ComparedAircraft {
  /** `<challenge>/<entry>`. */
  readonly id: string;
  readonly name: string;
  /** As pages name them. */
  readonly builders: string;
  readonly challenge: { readonly id: string; readonly title: string };
  /** Its page, with the base path. */
  readonly address: string;
  /** Its place and score, or why it has none. */
  readonly result: string;
  /** The flight and the setup its figures are of, in words. */
  readonly figuresOf: string;
  /** Null where nobody measured what a drawing needs. */
  readonly shape: PlanShape | null;
  /** Without its ±; null where it is not known. */
  readonly span: Shown | null;
  readonly flown: ComparedTime;
  readonly figures: readonly ComparedFigure[];
  /** How it is built, its motors, its flights. */
  readonly facts: readonly ComparedFacts[];
}

/** True of a number that is there. */
export function isThere<T extends Measured>(
  number: T | { readonly absent: string } | undefined,
): number is T {
  return number !== undefined && 'value' in number;
}
