import { currentAlmanac } from '../almanac/handover.ts';

/** A page for each challenge, with its record: what every page below `/challenges/<challenge>/` is made from. */
export function challengePaths() {
  return currentAlmanac().challenges.map((record) => ({
    params: { challenge: record.challenge.id },
    props: { record },
  }));
}

/** The data of each challenge under its own name and every former one: nothing can lead on from an address of data. */
export function challengeDataPaths() {
  return currentAlmanac().challenges.flatMap((record) =>
    [record.challenge.id, ...record.challenge.formerly].map((name) => ({
      params: { challenge: name },
      props: { record },
    })),
  );
}
