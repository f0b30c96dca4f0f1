import type { Quantity } from '../quantities/quantity.ts';

/** Units of figures as the data files write them. */
export type FigureUnit =
  | '1'
  | 'm'
  | 'm2'
  | 'rad'
  | 'kg'
  | 'kg/m'
  | 'N'
  | 'N.m'
  | 'N.s'
  | 'N/m2'
  | 'J'
  | 'J/kg'
  | 'W'
  | 's'
  | 's/kg'
  | 'm/s'
  | 'turns';

export type Basis = 'measured' | 'inspected' | 'logged' | 'partly assumed';

/** How much of the variance of a figure one base input contributes. */
export interface Share {
  /** Plain words, such as "the wing's span" or "the rubber's density". */
  readonly input: string;
  /** 0 to 1; the shares of a figure add up to 1 where u > 0. */
  readonly share: number;
}

/** Something a figure read itself, in the order in which it did. */
export type Term =
  | { readonly from: 'input'; readonly name: string; readonly quantity: Quantity }
  /** Another figure; `motor` is its place from 0, null where it is one of the whole entry. */
  | {
      readonly from: 'figure';
      readonly id: string;
      readonly unit: FigureUnit;
      readonly motor: number | null;
      readonly value: number;
    }
  /** An exact whole number of things, such as "motors". */
  | { readonly from: 'count'; readonly name: Counted; readonly value: number };

export type Counted = 'motors' | 'strands';

export interface PresentFigure {
  readonly id: string;
  readonly unit: FigureUnit;
  /** SI. */
  readonly value: number;
  /** Standard uncertainty, SI, by propagation from the base inputs. */
  readonly u: number;
  readonly basis: Basis;
  /** The defaults and assumptions used, in plain words; empty unless partly assumed (or named only). */
  readonly assumptions: readonly string[];
  /** What it was worked out from. */
  readonly worked: readonly Term[];
  /** Largest first. */
  readonly shares: readonly Share[];
}

/** A figure whose inputs are missing: the reason says which. */
export interface AbsentFigure {
  readonly id: string;
  readonly unit: FigureUnit;
  /** Such as "needs the tailplane's arm". */
  readonly absent: string;
}

export type Figure = PresentFigure | AbsentFigure;

export function isPresent(figure: Figure | undefined): figure is PresentFigure {
  return figure !== undefined && 'value' in figure;
}

/** All figures of one subject: those of the whole entry by id, and one such map for each item of motors. */
export interface FigureSet {
  readonly entry: ReadonlyMap<string, Figure>;
  readonly motors: readonly ReadonlyMap<string, Figure>[];
}
