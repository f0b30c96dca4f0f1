import { describe, expect, it } from 'vitest';
import { scaleBar } from '../../src/drawings/scale-bar.ts';

describe('scaleBar', () => {
  // By hand: at 100 units for a metre, 180 units are 1.8 m or 5.9 ft.
  it.each([
    [100, 180, 'metric', '1 m', 100],
    [100, 180, 'imperial', '5 ft', 152.4],
    [100, 60, 'metric', '500 mm', 50],
    [100, 60, 'imperial', '1 ft', 30.48],
    [1000, 180, 'metric', '100 mm', 100],
    [1000, 180, 'imperial', '6 in', 152.4],
    [1000, 60, 'imperial', '2 in', 50.8],
    [50, 500, 'metric', '10 m', 500],
  ] as const)('is round: %s for a metre, at most %s, %s', (scale, longest, system, text, length) => {
    const bar = scaleBar(scale, longest, system);
    expect(bar.text).toBe(text.replace(' ', '\u00a0'));
    expect(bar.length).toBeCloseTo(length, 6);
  });
});
