import { meanOfThrows } from '../flight/glide-throws.ts';
import type { Glide } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { Reader } from './definition.ts';
import { readDesignMass } from './mass-readings.ts';
import type { Subject, ThrownGlide } from './subject.ts';

/** What is read of a glide, and what it is called. */
const readings = {
  height: 'the heights of the test glides',
  distance: 'the distances of the test glides',
  time: 'the times of the test glides',
} as const satisfies Partial<Record<keyof Glide, string>>;

type Reading = keyof typeof readings;

/**
 * Mean over the test glides of one reading over another; null where no glide has both. The readings are base inputs; what
 * the glides' scatter, or the least doubt there must be, adds to them is one more.
 *
 * @param factor what each glide's quotient is multiplied by
 */
export function readMeanOfGlides(
  from: Reader,
  { glides }: Subject,
  over: Reading,
  under: Reading,
  factor: (thrown: ThrownGlide) => number = () => 1,
): number | null {
  const throws = glides.flatMap((thrown) => {
    const pair = { over: thrown.glide[over], under: thrown.glide[under] };
    return isComplete(pair) ? [{ thrown, ...pair }] : [];
  });
  if (throws.length === 0) return null;
  const sum = throws.reduce((total, each) => {
    const quotient = from.value(each.over, readings[over]) / from.value(each.under, readings[under]);
    return total + factor(each.thrown) * quotient;
  }, 0);
  const doubt = from.derived(glides, `the scatter of the test glides in ${over} over ${under}`, () => {
    const { mean, beyondReadings } = meanOfThrows(throws)!;
    return { kind: 'number', value: 1, u: beyondReadings / mean, origin: 'measured' };
  });
  return (doubt * sum) / throws.length;
}

/** Sinking speed in m/s at the mass the model was flown with: of test glides brought to that mass, else of the polar. */
export function readSinkAsFlown(from: Reader, subject: Subject): number {
  // At the same lift coefficient all speeds go with the root of the mass.
  const measured = readMeanOfGlides(from, subject, 'height', 'time', ({ design }) =>
    Math.sqrt(from.figure('flying-mass') / readDesignMass(from, { ...subject, design })),
  );
  return measured ?? from.figure('sink-speed');
}

function isComplete(pair: {
  over: Quantity | null;
  under: Quantity | null;
}): pair is { over: Quantity; under: Quantity } {
  return pair.over !== null && pair.under !== null && pair.over.value > 0 && pair.under.value > 0;
}
