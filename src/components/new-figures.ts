import { type Figure, type FigureSet, isPresent } from '../figures/figure.ts';

/** So little of its ± may a figure differ by to count as told: nobody could tell the two apart. */
const alike = 0.5;

/** The figures of a set that differ from those that another tells already by more than half their ±. */
export function newFigures(figures: FigureSet, told: FigureSet): FigureSet {
  return {
    entry: newIn(figures.entry, told.entry),
    motors: figures.motors.map((motor, index) => newIn(motor, told.motors[index])),
  };
}

type Figures = ReadonlyMap<string, Figure>;

function newIn(figures: Figures, told: Figures | undefined): Figures {
  return new Map([...figures].filter(([id, figure]) => !alreadyTold(figure, told?.get(id))));
}

function alreadyTold(one: Figure, other: Figure | undefined): boolean {
  return isPresent(one) && isPresent(other) && Math.abs(one.value - other.value) <= alike * other.u;
}
