import type { StretchPoint } from '../model/batch.ts';

/**
 * Stretch of the strands of a skein wound to a share of its break turns: λ(x) = √(1 + x²(λ_b² − 1)), λ_b the stretch at
 * which it breaks. A strand lies on a helix whose turns grow with x: Pythagoras on the unrolled helix; the skein is held
 * at its made-up length. Common practice, no source.
 */
export function stretchAtShare(share: number, breakStretch: number): number {
  return Math.sqrt(1 + share * share * (breakStretch * breakStretch - 1));
}

/** A stretch test taken apart: on the way out, and back from the longest stretch. */
export interface StretchCurve {
  readonly top: number;
  /** In the order measured, from slack to the top. */
  readonly out: readonly StretchPoint[];
  /** In the order measured, from the top to slack; empty where the test ends at the top. */
  readonly back: readonly StretchPoint[];
}

/** Parts a test at its longest stretch; null where it has fewer than two points. */
export function stretchCurve(points: readonly StretchPoint[]): StretchCurve | null {
  if (points.length < 2) return null;
  const top = points.reduce((longest, point) => Math.max(longest, point.ratio), 0);
  const first = points.findIndex((point) => point.ratio === top);
  const last = points.findLastIndex((point) => point.ratio === top);
  return {
    top,
    out: points.slice(0, first + 1),
    back: last === points.length - 1 ? [] : points.slice(last),
  };
}

/** Work put in on the way out, ∫F dλ in N; times the unstretched length it is in J. */
export function workOut(curve: StretchCurve): number {
  return workBelow(curve.out, Number.POSITIVE_INFINITY);
}

/** Work given back from the top to slack, or from the stretch given, ∫F dλ in N, positive. */
export function workBack(curve: StretchCurve, from: number = Number.POSITIVE_INFINITY): number {
  return -workBelow(curve.back, from);
}

/** Trapezoid over the part of a row of points that lies below a stretch; negative where the stretch falls. */
function workBelow(points: readonly StretchPoint[], limit: number): number {
  let work = 0;
  for (let index = 1; index < points.length; index++) {
    const a = points[index - 1]!;
    const b = points[index]!;
    const start = Math.min(a.ratio, limit);
    const end = Math.min(b.ratio, limit);
    if (start === end) continue;
    const slope = (b.force - a.force) / (b.ratio - a.ratio);
    work += (end - start) * (a.force + slope * ((start + end) / 2 - a.ratio));
  }
  return work;
}
