import type { PlanformPanel } from './planform.ts';

/**
 * Dihedral weighted as it acts in a sideslip, in radians: ∫Γ(y)·c(y)·y dy / ∫c(y)·y dy over the projected half span.
 * Strip theory of the rolling moment: each strip's change of lift goes with Γ and its chord, its lever with y.
 * NaN for a wing without area.
 */
export function effectiveDihedral(panels: readonly PlanformPanel[]): number {
  let from = 0;
  let weighted = 0;
  let weights = 0;
  for (const { length, root, tip, dihedral } of panels) {
    const width = length * Math.cos(dihedral);
    const weight = width * ((from * (root + tip)) / 2 + width * (root / 6 + tip / 3));
    weighted += dihedral * weight;
    weights += weight;
    from += width;
  }
  return weighted / weights;
}
