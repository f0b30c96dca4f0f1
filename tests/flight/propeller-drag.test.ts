import { describe, expect, it } from 'vitest';
import { discArea, propellerDrag } from '../../src/flight/propeller-drag.ts';

describe('the drag of a propeller in the glide', () => {
  it('goes with its disc over the wing', () => {
    // By hand: 0.6 m of diameter are 0.282743 m²; 0.02 of that on 0.15 m² of wing are 0.0376991.
    expect(discArea(0.6)).toBeCloseTo(0.282743, 6);
    expect(propellerDrag(0.02, 0.282743, 0.15)).toBeCloseTo(0.0376991, 7);
  });
});
