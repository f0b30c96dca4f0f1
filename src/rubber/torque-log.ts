import type { TorquePoint } from '../model/batch.ts';

/** A torque log or torque test ready to be read at any number of turns. */
export interface TorqueCurve {
  /** The turns it was wound to. */
  readonly top: number;
  /** The turns at which it ends, 0 where it was let go slack. */
  readonly end: number;
  /** From slack to wound. */
  readonly points: readonly TorquePoint[];
  /** 2π∫Q dn from the end up to each point, J. */
  readonly work: Float64Array;
}

/** A log's curve; null where it does not hold two different numbers of turns. */
export function torqueCurve(unwinding: readonly TorquePoint[]): TorqueCurve | null {
  const points = unwinding.toReversed();
  const end = points[0]?.turns ?? 0;
  const top = points.at(-1)?.turns ?? 0;
  if (top <= end) return null;
  const work = new Float64Array(points.length);
  for (let index = 1; index < points.length; index++)
    work[index] = work[index - 1]! + workBetween(points[index - 1]!, points[index]!);
  return { top, end, points, work };
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

function at({ points, work }: TorqueCurve, turns: number): { torque: number; work: number } {
  const last = points.length - 1;
  if (turns <= points[0]!.turns) return { torque: points[0]!.torque, work: 0 };
  if (turns >= points[last]!.turns) return { torque: points[last]!.torque, work: work[last]! };
  // Halving, so that a log of many rows is read as fast as a short one.
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]!.turns <= turns) low = middle;
    else high = middle;
  }
  const a = points[low]!;
  const b = points[high]!;
  const torque = a.torque + ((b.torque - a.torque) * (turns - a.turns)) / (b.turns - a.turns);
  return { torque, work: work[low]! + workBetween(a, { turns, torque }) };
}

/** 2π times the trapezoid between two points. */
function workBetween(a: TorquePoint, b: TorquePoint): number {
  return Math.PI * (a.torque + b.torque) * (b.turns - a.turns);
}
