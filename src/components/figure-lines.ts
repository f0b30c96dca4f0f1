import { type Figure, type FigureSet, isPresent, type PresentFigure } from '../figures/figure.ts';
import { words } from '../words.ts';
import { type Measure, measureOfFigure } from './measure.ts';
import { figureName } from './rule-sentences.ts';

/** A figure that could be worked out, as text. */
export interface FigureLine {
  readonly id: string;
  readonly name: string;
  readonly measure: Measure;
  readonly figure: PresentFigure;
}

/** Figures that could not be worked out for the same reason. */
export interface AbsentLine {
  readonly names: readonly string[];
  readonly reason: string;
}

/** All figures of one aircraft, those of the whole first, then those of each motor; the absent ones by reason. */
export function figureLines(figures: FigureSet): { present: FigureLine[]; absent: AbsentLine[] } {
  const named = namedFigures(figures);
  const present: FigureLine[] = [];
  const reasons = new Map<string, string[]>();
  for (const { name, figure } of named) {
    if (isPresent(figure)) present.push({ id: figure.id, name, measure: measureOfFigure(figure), figure });
    else reasons.set(figure.absent, [...(reasons.get(figure.absent) ?? []), name]);
  }
  return { present, absent: [...reasons].map(([reason, names]) => ({ names, reason })) };
}

function namedFigures(figures: FigureSet): { name: string; figure: Figure }[] {
  const whole = [...figures.entry.values()].map((figure) => ({ name: figureName(figure.id), figure }));
  const ofMotors = figures.motors.flatMap((motor, index) =>
    [...motor.values()].map((figure) => {
      const name = figureName(figure.id);
      return {
        name: figures.motors.length === 1 ? name : words.entry.figureOfMotor(name, index + 1),
        figure,
      };
    }),
  );
  return [...whole, ...ofMotors];
}
