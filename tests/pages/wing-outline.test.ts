import { describe, expect, it } from 'vitest';
import { wingOutline } from '../../src/components/wing-outline.ts';
import { design, figure, figureSet, quantity } from './almanac-fixture.ts';

const chord = figureSet([figure('mean-chord', 'm', 0.2, 0.002)]);

describe('wingOutline', () => {
  // By hand: a wing of 2 m × 0.2 m at 600 wide is 60 deep.
  it('is a rectangle of span and mean chord where there are no panels', () => {
    expect(wingOutline(design, chord, 600)).toEqual({
      width: 600,
      height: 60,
      points: '300,0 600,0 600,60 300,60 300,60 0,60 0,0 300,0',
      from: 'chord',
    });
  });

  // By hand: half wing 0.5 m flat at 0.2 m, then 0.5 m to a tip of 0.1 m swept by 0.05 m; 300 wide for each metre.
  it('follows the panels, sweep included', () => {
    const panel = (root: number, tip: number, sweep: number) => ({
      length: quantity('length', 0.5, 0),
      root: quantity('length', root, 0),
      tip: quantity('length', tip, 0),
      sweep: quantity('length', sweep, 0),
      dihedral: null,
    });
    const wing = { ...design.wing, panels: [panel(0.2, 0.2, 0), panel(0.2, 0.1, 0.05)] };
    const outline = wingOutline({ ...design, wing }, figureSet([]), 600);
    expect(outline?.from).toBe('panels');
    expect(outline?.height).toBe(60);
    expect(outline?.points).toContain('600,15 600,45');
  });

  it('is absent where neither panels nor chord are known', () => {
    expect(wingOutline(design, figureSet([]), 600)).toBeNull();
  });
});
