import type { Entry } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { setupInForce } from './setup-in-force.ts';
import { statesUncertainty } from './stated-uncertainty.ts';
import type { ThrownGlide } from './subject.ts';

/**
 * The test glides that tell of a setup: those of the setup in force on their date, and so of all later ones, which went
 * cleanly or do not say how they went. A glide without a date was thrown with the entry as first written. Times carry the
 * watch's uncertainty unless their own is stated.
 *
 * @param setups the entry's, with what officials measured laid over them
 * @param place of the setup among them
 * @param watch standard uncertainty of a hand-held watch, s
 */
export function thrownGlides(
  { glides }: Pick<Entry, 'glides'>,
  setups: Entry['setups'],
  place: number,
  watch: number,
): readonly ThrownGlide[] {
  return glides.flatMap((glide): ThrownGlide[] => {
    const thrownIn = glide.date === null ? 0 : setupInForce(setups, glide.date);
    const clean = glide.behaviour.every((behaviour) => behaviour === 'clean');
    if (!clean || thrownIn > place) return [];
    const time = glide.time === null ? null : timed(glide.time, watch);
    return [{ glide: { ...glide, time }, design: (setups[thrownIn] ?? setups[0]).design }];
  });
}

function timed(time: Quantity, watch: number): Quantity {
  return statesUncertainty(time) ? time : { ...time, u: watch };
}
