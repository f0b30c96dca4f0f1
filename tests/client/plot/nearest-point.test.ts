import { describe, expect, it } from 'vitest';
import { nearestPoint } from '../../../src/client/plot/nearest-point.ts';

const at = (id: string, x: number, y: number) => ({
  id,
  name: id,
  x,
  y,
  marked: false,
  waiting: false,
  best: false,
  across: null,
  up: null,
});

describe('the mark pointed at', () => {
  const points = [at('a', 100, 100), at('b', 112, 100)];

  it('is the nearest', () => {
    expect(nearestPoint(points, 105, 100)?.id).toBe('a');
    expect(nearestPoint(points, 107, 100)?.id).toBe('b');
  });

  it('is none far from all', () => {
    expect(nearestPoint(points, 300, 100)).toBeNull();
    expect(nearestPoint([], 0, 0)).toBeNull();
  });
});
