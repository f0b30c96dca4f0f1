import { currentAlmanac } from '../almanac/handover.ts';

/** A page for each challenge, with its record: what every page below `/challenges/<challenge>/` is made from. */
export function challengePaths() {
  return currentAlmanac().challenges.map((record) => ({
    params: { challenge: record.challenge.id },
    props: { record },
  }));
}
