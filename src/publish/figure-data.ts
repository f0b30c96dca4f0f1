import type { Figure, FigureSet } from '../figures/figure.ts';
import { isPresent } from '../figures/figure.ts';
import { significant } from '../quantities/decimal.ts';

/** A figure as the data files write it: SI, 12 significant digits; an absent one says what it needs and has no value. */
export type FigureData =
  | { readonly value: number; readonly u: number; readonly unit: string; readonly basis: string }
  | { readonly absent: string };

/** Figures by id, sorted by it. */
export function figureData(figures: ReadonlyMap<string, Figure>): Record<string, FigureData> {
  const sorted = [...figures].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return Object.fromEntries(sorted.map(([id, figure]) => [id, dataOfFigure(figure)]));
}

/** The figures of each motor, in the order of the entry's motors. */
export function motorsData(figures: FigureSet): { readonly figures: Record<string, FigureData> }[] {
  return figures.motors.map((motor) => ({ figures: figureData(motor) }));
}

/** One figure. */
export function dataOfFigure(figure: Figure): FigureData {
  if (!isPresent(figure)) return { absent: figure.absent };
  return {
    value: significant(figure.value),
    u: significant(figure.u),
    unit: figure.unit,
    basis: figure.basis,
  };
}
