import { type Figure, type FigureSet, isPresent } from '../../figures/figure.ts';

/** Figures that differ by no more than this share of themselves have not moved. */
const leastMove = 1e-3;

/** One figure that is not what it was. */
export interface MovedFigure {
  readonly id: string;
  /** Place of the motor it is of, counted from 0; null for one of the whole aircraft. */
  readonly motor: number | null;
  /** Null for a figure that this side has not. */
  readonly before: Figure | null;
  readonly after: Figure | null;
}

/**
 * The figures that moved by more than 0.1 %, came or went, in the order of the figures. Nothing before is an aircraft
 * that is new: then all of them that could be worked out.
 */
export function movedFigures(before: FigureSet | null, after: FigureSet): readonly MovedFigure[] {
  const ofEntry = moved(before?.entry, after.entry, null);
  const motors = after.motors.length === 1 && (before === null || before.motors.length === 1) ? null : 0;
  const count = Math.max(before?.motors.length ?? 0, after.motors.length);
  const ofMotors = Array.from({ length: count }, (_, index) =>
    moved(before?.motors[index], after.motors[index], motors === null ? null : index),
  );
  return [...ofEntry, ...ofMotors.flat()];
}

function moved(
  before: ReadonlyMap<string, Figure> | undefined,
  after: ReadonlyMap<string, Figure> | undefined,
  motor: number | null,
): MovedFigure[] {
  const ids = new Set([...(after?.keys() ?? []), ...(before?.keys() ?? [])]);
  return [...ids].flatMap((id) => {
    const [was, is] = [before?.get(id), after?.get(id)];
    if (!differs(was, is)) return [];
    return [{ id, motor, before: was ?? null, after: is ?? null }];
  });
}

function differs(was: Figure | undefined, is: Figure | undefined): boolean {
  if (!isPresent(was) || !isPresent(is)) return isPresent(was) || isPresent(is);
  return Math.abs(is.value - was.value) > leastMove * Math.max(Math.abs(was.value), Math.abs(is.value));
}

/** What is taken for granted where nobody measured it, over all figures of a set, each once. */
export function assumptionsOf({ entry, motors }: FigureSet): readonly string[] {
  const all = [entry, ...motors].flatMap((figures) =>
    [...figures.values()].flatMap((figure) => (isPresent(figure) ? figure.assumptions : [])),
  );
  return [...new Set(all)];
}
