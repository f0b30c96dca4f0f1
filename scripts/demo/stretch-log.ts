import { treloarPoints } from '../../src/rubber/treloar.ts';
import { noiseFrom } from './noise.ts';

/** One kgf/cm² in Pa, exact. */
const pascals = 98066.5;
const density = 930;
/** Forces were read on a hook scale with this step, in N. */
const step = 0.05;

/** A strand that was pulled out and eased back. */
export interface StretchedStrand {
  /** Unstretched length between the marks, in mm. */
  readonly length: number;
  /** In g. */
  readonly mass: number;
  /** Longest stretch, as a ratio. */
  readonly top: number;
  /** How much stiffer than Treloar's rubber of 1944. */
  readonly stiffness: number;
  /** How far the way back lies below the way out, half way up: 0.25 is a quarter. */
  readonly loss: number;
  readonly seed: number;
}

/** The test as a log: extension and force, out and back in the order measured. */
export function stretchLog(strand: StretchedStrand): string {
  const noise = noiseFrom(strand.seed);
  const section = strand.mass / 1000 / (density * (strand.length / 1000));
  const rows = ['extension [mm];force [N]'];
  const points = 30;
  const row = (ratio: number, share: number, back: boolean): string => {
    const held = back ? 1 - strand.loss * (1 - share ** 9) * (1 + 0.25 * (1 - share)) : 1;
    const force = strand.stiffness * stressAt(ratio) * pascals * section * held * (1 + 0.006 * noise());
    const read = Math.max(0, Math.round(force / step) * step);
    return `${((ratio - 1) * strand.length).toFixed(0)};${read.toFixed(2)}`;
  };
  for (let index = 0; index <= points; index++)
    rows.push(row(1 + ((strand.top - 1) * index) / points, index / points, false));
  for (let index = points - 1; index >= 0; index--)
    rows.push(row(1 + ((strand.top - 1) * index) / points, index / points, true));
  return `${rows.join('\n')}\n`;
}

/** Stress in kgf/cm² at a stretch up to Treloar's last point, straight lines between his points. */
export function stressAt(ratio: number): number {
  for (let index = 1; index < treloarPoints.length; index++) {
    const [from, low] = treloarPoints[index - 1]!;
    const [to, high] = treloarPoints[index]!;
    if (ratio <= to) return low + ((high - low) * (ratio - from)) / (to - from);
  }
  throw new Error(`Treloar's points end at 7.6; no stress is known at ${ratio}.`);
}
