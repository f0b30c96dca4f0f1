import { describe, expect, it } from 'vitest';
import { drawing } from '../../src/words/drawing.ts';
import { figure, figureSet } from '../pages/almanac-fixture.ts';
import { metres, motor, shapeOf, trapezoid } from './fixture.ts';

describe('the description of a plan', () => {
  it('says in words what the drawing shows', () => {
    const figures = figureSet([
      figure('balance-point', '1', 0.4, 0.01),
      figure('neutral-point', '1', 0.6, 0.01),
    ]);
    const motors = [
      motor({ count: 2, at: [metres(0.3)] }),
      motor({ count: 1, at: [metres(0)], faces: 'pusher' }),
    ];
    expect(drawing.description(shapeOf(trapezoid(1, { motors }), figures), '2 m (78.7 in)', true)).toBe(
      'Seen from above and from behind, nose up: a wing of 2 m (78.7 in) span, in 1 panel a side, a tailplane behind it, 2 propellers that pull and 1 propeller that pushes, the balance at 40 % of the mean chord behind its leading edge, the neutral point at 60 % of the mean chord behind its leading edge.',
    );
  });

  it('says where a foreplane is, and that the balance lies ahead of the wing', () => {
    const shape = shapeOf(
      trapezoid(1, { layout: 'canard' }),
      figureSet([figure('balance-point', '1', -0.64, 0.01)]),
    );
    expect(drawing.description(shape, '2 m', false)).toBe(
      'Seen from above, nose up: a wing of 2 m span, in 1 panel a side, a foreplane ahead of it, no motor drawn, the balance at 64 % of the mean chord ahead of its leading edge.',
    );
  });

  it('has a sentence for each thing a drawing takes for granted', () => {
    for (const sentence of Object.values(drawing.notes)) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });
});
