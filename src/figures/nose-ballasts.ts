import { noseBallast } from '../airframe/nose-ballast.ts';
import type { Reader } from './definition.ts';
import { type DerivedNumber, evaluateDerived } from './evaluate.ts';
import type { Figure } from './figure.ts';
import type { Subject } from './subject.ts';

/** What it takes to balance a model at a static margin. */
export interface NoseBallast {
  /** The static margin wanted, in mean aerodynamic chords. */
  readonly margin: number;
  /** How far the balance has to move forward, m; negative: back. */
  readonly shift: Figure;
  /** Weight to add as far forward as ballast can sit, kg; negative: to take out there. */
  readonly ballast: Figure;
}

/** Static margins that free flight models are commonly trimmed between; common practice, no source. */
const marginsWanted = [0.05, 0.1, 0.15];

/**
 * The nose ballast for each of the usual static margins, with uncertainty by the same law as every figure. Absent with
 * its reason where an input is missing.
 */
export function noseBallasts(subject: Subject): readonly NoseBallast[] {
  const figures = evaluateDerived(
    subject,
    marginsWanted.flatMap((margin): DerivedNumber[] => [
      { id: 'balance-shift', unit: 'm', compute: (from) => readShift(from, margin) },
      { id: 'nose-ballast', unit: 'kg', compute: (from) => readBallast(from, margin) },
    ]),
  );
  return marginsWanted.map((margin, index) => ({
    margin,
    shift: figures[2 * index]!,
    ballast: figures[2 * index + 1]!,
  }));
}

function readShift(from: Reader, margin: number): number {
  return (margin - from.figure('static-margin')) * from.figure('mean-aerodynamic-chord');
}

function readBallast(from: Reader, margin: number): number {
  const mass = from.figure('flying-mass');
  // Trim ballast is the mass over that distance, by definition.
  const arm = mass / from.figure('trim-ballast');
  const ballast = noseBallast(mass, arm, readShift(from, margin));
  return ballast ?? from.absent('lies beyond what weight in the nose can do');
}
