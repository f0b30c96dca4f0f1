import type { TorquePoint } from '../model/batch.ts';

/** A torque log or torque test ready to be read at any number of turns. */
export interface TorqueCurve {
  /** The turns it was wound to. */
  readonly top: number;
  /** The turns at which it ends, 0 where it was let go slack. */
  readonly end: number;
  /** From slack to wound; `work` is 2π∫Q dn from the end up to there, J. */
  readonly points: readonly (TorquePoint & { readonly work: number })[];
}

/** A log's curve; null where it does not hold two different numbers of turns. */
export function torqueCurve(unwinding: readonly TorquePoint[]): TorqueCurve | null {
  const points: (TorquePoint & { work: number })[] = [];
  for (const { turns, torque } of unwinding.toReversed()) {
    const before = points.at(-1);
    const added = before === undefined ? 0 : Math.PI * (before.torque + torque) * (turns - before.turns);
    points.push({ turns, torque, work: (before?.work ?? 0) + added });
  }
  const end = points[0]?.turns ?? 0;
  const top = points.at(-1)?.turns ?? 0;
  return top > end ? { top, end, points } : null;
}

/** Torque in N·m with so many turns in, interpolated; beyond the top, and below the end, it stays as it is there. */
export function torqueAt(curve: TorqueCurve, turns: number): number {
  return at(curve, turns).torque;
}

/**
 * Energy in J that the motor gives on its way from so many turns down to slack: 2π∫Q dn, trapezoid between the readings
 * (work of a torque: Q·dφ). What lies beyond the top, or below the end of the log, is not in it.
 */
export function energyFrom(curve: TorqueCurve, turns: number): number {
  return at(curve, turns).work;
}

function at({ points }: TorqueCurve, turns: number): { torque: number; work: number } {
  const first = points[0]!;
  const last = points.at(-1)!;
  if (turns <= first.turns) return first;
  if (turns >= last.turns) return last;
  // Halving keeps to the lowest place with more turns, so that a long log is read as fast as a short one.
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]!.turns <= turns) low = middle;
    else high = middle;
  }
  const a = points[low]!;
  const b = points[high]!;
  const torque = a.torque + ((b.torque - a.torque) * (turns - a.turns)) / (b.turns - a.turns);
  return { torque, work: a.work + Math.PI * (a.torque + torque) * (turns - a.turns) };
}
