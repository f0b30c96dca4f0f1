import { describe, expect, it } from 'vitest';
import {
  breakTurns,
  geometricMass,
  skeinLength,
  strandsSection,
  weighedSection,
} from '../../src/rubber/skein.ts';

const inch = 0.0254;

describe('a skein', () => {
  it('breaks at the turns of a reported case', () => {
    // Common practice, no source: two strands 0.083 × 0.042 in, loop 17 in, C = 10.64 → 127.4 turns an inch, 2166 turns.
    const section = strandsSection(2, 0.083 * inch, 0.042 * inch);
    expect(breakTurns(10.64, inch, section)).toBeCloseTo(127.4, 1);
    expect(breakTurns(10.64, 17 * inch, section)).toBeCloseTo(2166, 0);
  });

  it('gives back its length and section from its mass', () => {
    const section = strandsSection(10, 0.003, 0.001);
    const mass = geometricMass(930, section, 0.5);
    // By hand: 10 × 3 mm × 1 mm = 30 mm², times 500 mm = 15 cm³, times 0.93 g/cm³ = 13.95 g.
    expect(mass).toBeCloseTo(0.01395, 12);
    expect(skeinLength(mass, 930, section)).toBeCloseTo(0.5, 12);
    expect(weighedSection(mass, 930, 0.5)).toBeCloseTo(section, 15);
  });
});
