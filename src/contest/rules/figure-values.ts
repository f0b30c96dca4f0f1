import type { Figure, FigureSet } from '../../figures/figure.ts';

/**
 * One figure as rules read it: a single one of the whole entry, or one for each item of motors. Empty where no figure
 * of that id was worked out.
 */
export function figureValues(figures: FigureSet, id: string): readonly Figure[] {
  const ofEntry = figures.entry.get(id);
  if (ofEntry !== undefined) return [ofEntry];
  return figures.motors.map((motor) => motor.get(id)).filter((figure) => figure !== undefined);
}

/** True where the figure belongs to each item of motors, so that it is written as a list. */
export function isOfMotors(figures: FigureSet, id: string): boolean {
  return !figures.entry.has(id) && figures.motors.some((motor) => motor.has(id));
}
