import { describe, expect, it } from 'vitest';
import { geometricMass, skeinLength, strandsSection, weighedSection } from '../../src/rubber/skein.ts';

describe('a skein', () => {
  it('gives back its length and section from its mass', () => {
    const section = strandsSection(10, 0.003, 0.001);
    const mass = geometricMass(930, section, 0.5);
    // By hand: 10 × 3 mm × 1 mm = 30 mm², times 500 mm = 15 cm³, times 0.93 g/cm³ = 13.95 g.
    expect(mass).toBeCloseTo(0.01395, 12);
    expect(skeinLength(mass, 930, section)).toBeCloseTo(0.5, 12);
    expect(weighedSection(mass, 930, 0.5)).toBeCloseTo(section, 15);
  });
});
