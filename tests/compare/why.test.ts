import { describe, expect, it } from 'vitest';
import { weigh } from '../../src/compare/why.ts';

const split = (
  total: [number, number],
  height: [number, number],
  use: [number, number],
  sink: [number, number],
) => {
  const ratio = ([ln, u]: [number, number]) => ({ ln, u });
  return { total: ratio(total), parts: { height: ratio(height), use: ratio(use), sink: ratio(sink) } };
};

describe('what a split of two times lets one say', () => {
  it('names the part that clearly makes most of it', () => {
    const why = weigh(split([0.4, 0.01], [0.3, 0.05], [0.0, 0.1], [0.1, 0.1]));
    expect(why).toMatchObject({ differs: true, most: 'height', longer: ['height'], shorter: [] });
    expect(why.alike).toEqual(['use', 'sink']);
  });

  it('names none where the largest part is less than half', () => {
    const why = weigh(split([0.6, 0.01], [0.2, 0.01], [0.21, 0.01], [0.19, 0.01]));
    expect(why.most).toBeNull();
    expect(why.longer).toEqual(['use', 'height', 'sink']);
  });

  it('names none where the largest part is not clear', () => {
    const why = weigh(split([0.4, 0.01], [0.35, 0.2], [0.05, 0.2], [0, 0.2]));
    expect(why).toMatchObject({ most: null, longer: [], shorter: [], largest: 'height' });
  });

  it('says what works against it', () => {
    const why = weigh(split([0.4, 0.01], [0.7, 0.05], [-0.3, 0.05], [0, 0.1]));
    expect(why).toMatchObject({ longer: ['height'], shorter: ['use'], alike: ['sink'], most: 'height' });
  });

  it('says that two times within their uncertainty do not differ', () => {
    expect(weigh(split([0.01, 0.02], [0.5, 0.1], [-0.5, 0.1], [0, 0.1])).differs).toBe(false);
  });
});
