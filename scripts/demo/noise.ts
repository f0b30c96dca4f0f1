/** Readings scatter, and the demo is to come out the same each time: a row of numbers in [-1, 1] that a seed fixes. */
export function noiseFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    // Constants of the 32-bit linear congruential generator in Numerical Recipes (from memory); good enough for jitter.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 31 - 1;
  };
}
