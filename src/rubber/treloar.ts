/**
 * Simple extension of vulcanised natural rubber: stretched over unstretched length, and force per unstretched section
 * in kgf/cm². L. R. G. Treloar, "Stress-strain data for vulcanised rubber under various types of deformation",
 * Transactions of the Faraday Society 40 (1944) 59.
 */
export const treloarPoints: readonly (readonly [ratio: number, stress: number])[] = [
  [1, 0],
  [1.02, 0.26],
  [1.125, 1.37],
  [1.24, 2.3],
  [1.39, 3.23],
  [1.585, 4.16],
  [1.9, 5.1],
  [2.18, 6],
  [2.42, 6.9],
  [3.02, 8.8],
  [3.57, 10.7],
  [4.03, 12.5],
  [4.76, 16.2],
  [5.36, 19.9],
  [5.75, 23.6],
  [6.15, 27.4],
  [6.4, 31],
  [6.6, 34.8],
  [6.85, 38.5],
  [7.05, 42.1],
  [7.15, 45.8],
  [7.25, 49.6],
  [7.4, 53.3],
  [7.5, 57],
  [7.6, 64.4],
];

/** One kgf/cm² in Pa, exact. */
const pascals = 98066.5;

interface Stretch {
  readonly from: number;
  /** Force at its beginning, kgf/cm². */
  readonly low: number;
  readonly slope: number;
  /** Work up to its beginning. */
  readonly before: number;
}

/** The stretches between the points, the furthest first: that is where wound rubber is. */
const stretches = stretchesOf(treloarPoints).reverse();

function stretchesOf(points: typeof treloarPoints): Stretch[] {
  const stretches: Stretch[] = [];
  let before = 0;
  points.slice(1).forEach(([to, high], index) => {
    const [from, low] = points[index]!;
    const stretch = { from, low, slope: (high - low) / (to - from), before };
    stretches.push(stretch);
    before = workAt(stretch, to);
  });
  return stretches;
}

function workAt({ from, low, slope, before }: Stretch, ratio: number): number {
  const step = ratio - from;
  return before + step * (low + (slope * step) / 2);
}

/**
 * Work W(λ) = ∫σ dλ in J per m³ of unstretched rubber on the way to stretch λ: trapezoid between Treloar's points;
 * beyond the last one its slope goes on; 0 up to λ = 1.
 */
export function treloarEnergy(ratio: number): number {
  const stretch = stretches.find(({ from }) => ratio > from);
  return stretch === undefined ? 0 : workAt(stretch, ratio) * pascals;
}
