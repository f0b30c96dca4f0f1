import { describe, expect, it } from 'vitest';
import { stretchAtShare, stretchCurve, workBack, workOut } from '../../src/rubber/stretch-energy.ts';

describe('the stretch of wound rubber', () => {
  it('is 1 when slack and the stretch at break when wound to break', () => {
    expect(stretchAtShare(0, 7.6)).toBe(1);
    expect(stretchAtShare(1, 7.6)).toBeCloseTo(7.6, 12);
  });
});

describe('a stretch test', () => {
  const curve = stretchCurve([
    { ratio: 1, force: 0 },
    { ratio: 3, force: 4 },
    { ratio: 7, force: 16 },
    { ratio: 3, force: 3 },
    { ratio: 1.2, force: 0 },
  ])!;

  it('is parted at its longest stretch', () => {
    expect(curve.top).toBe(7);
    expect(curve.out.map(({ ratio }) => ratio)).toEqual([1, 3, 7]);
    expect(curve.back.map(({ ratio }) => ratio)).toEqual([7, 3, 1.2]);
  });

  it('has its works as areas under its lines', () => {
    // By hand: out ½·4·2 + ½·(4 + 16)·4 = 44; back ½·(16 + 3)·4 + ½·3·1.8 = 40.7.
    expect(workOut(curve)).toBeCloseTo(44, 12);
    expect(workBack(curve)).toBeCloseTo(40.7, 12);
  });

  it('gives back a part from a shorter stretch', () => {
    // By hand: at 5 the way back has 9.5 N; ½·(9.5 + 3)·2 + ½·3·1.8 = 15.2. At 2.1 it has 1.5 N: ½·1.5·0.9 = 0.675.
    expect(workBack(curve, 5)).toBeCloseTo(15.2, 12);
    expect(workBack(curve, 2.1)).toBeCloseTo(0.675, 12);
    expect(workBack(curve, 1.1)).toBeCloseTo(0, 12);
  });

  it('has no way back where it ends at the top, and no curve with fewer than two points', () => {
    const out = stretchCurve([
      { ratio: 1, force: 0 },
      { ratio: 7, force: 16 },
    ]);
    expect(out?.back).toEqual([]);
    expect(stretchCurve([{ ratio: 1, force: 0 }])).toBeNull();
  });

  it('lets a rest at the top add nothing', () => {
    const rested = stretchCurve([
      { ratio: 1, force: 0 },
      { ratio: 7, force: 16 },
      { ratio: 7, force: 14 },
      { ratio: 1, force: 0 },
    ])!;
    expect(workOut(rested)).toBeCloseTo(48, 12);
    expect(workBack(rested)).toBeCloseTo(42, 12);
  });
});
