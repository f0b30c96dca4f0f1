import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import { isPresent, type PresentFigure } from '../../src/figures/figure.ts';
import { noseBallasts } from '../../src/figures/nose-ballasts.ts';
import type { Design } from '../../src/model/design.ts';
import { batch, design, fullDesign, measured, subject } from './example-design.ts';

const batches = new Map([['fen-a', batch()]]);

/** The full example with a flying mass that nobody has to add up: 650 g. */
function example(overrides: Partial<Design> = {}): Design {
  const mass = { airframe: null, flying: measured('mass', 0.65, 0.001), parts: {} };
  return { ...fullDesign(), mass, ...overrides };
}

function figure(of: Design, id: string): PresentFigure {
  const found = evaluate(subject({ design: of, batches }), 'model').entry.get(id);
  if (!isPresent(found)) throw new Error(`${id} is absent`);
  return found;
}

describe('the nose ballast for a static margin', () => {
  const rows = noseBallasts(subject({ design: example(), batches }));

  it('is told for 5, 10 and 15 %', () => {
    expect(rows.map(({ margin }) => margin)).toEqual([0.05, 0.1, 0.15]);
  });

  it('gives a model that has the margin', () => {
    // Moments by hand: 650 g at 104 mm behind the leading edge, the ballast 310 mm ahead of it.
    for (const { margin, ballast } of rows) {
      if (!isPresent(ballast)) throw new Error('absent');
      const balance = (0.65 * 0.104 - ballast.value * 0.31) / (0.65 + ballast.value);
      const moved = example({ balance: measured('length', balance, 0.002) });
      expect(figure(moved, 'static-margin').value).toBeCloseTo(margin, 10);
    }
  });

  it('has its uncertainty from the margin above all', () => {
    // u(shift) = MAC · u(margin) and a bit more of the chord's own; the ballast follows in the ratio m/(arm − Δx).
    const margin = figure(example(), 'static-margin');
    const chord = figure(example(), 'mean-aerodynamic-chord').value;
    const { shift } = rows[1]!;
    if (!isPresent(shift)) throw new Error('absent');
    expect(shift.u).toBeGreaterThan(0.9 * chord * margin.u);
    expect(shift.u).toBeLessThan(1.2 * chord * margin.u);
  });

  it('is the trim ballast times the shift where that is small', () => {
    // The exact form differs from the small-shift one by the factor 1/(1 − Δx/arm).
    const perMetre = figure(example(), 'trim-ballast').value;
    for (const { shift, ballast } of rows) {
      if (!isPresent(shift) || !isPresent(ballast)) throw new Error('absent');
      const factor = ballast.value / (perMetre * shift.value);
      expect(factor).toBeCloseTo(1 / (1 - shift.value / 0.414), 10);
    }
  });

  it('says what it needs', () => {
    const reasonOf = (of: Design) =>
      noseBallasts(subject({ design: of, batches })).map(({ ballast }) =>
        isPresent(ballast) ? null : ballast.absent,
      );
    expect(reasonOf(example({ nose: null }))).toEqual(Array(3).fill("needs the nose's length"));
    expect(reasonOf(example({ balance: null }))).toEqual(Array(3).fill('needs the balance'));
    expect(reasonOf(example({ layout: 'canard' }))[0]).toBe(
      'is worked out only for models with the tailplane behind the wing',
    );
    expect(reasonOf({ ...design(), nose: measured('length', 0.3, 0.001) })[0]).toBe('needs the balance');
  });

  it('says so where no weight in so short a nose does it', () => {
    // The ballast sits at the leading edge, 1 mm ahead of the balance: 15 % lie further forward than that.
    const stub = example({
      balance: measured('length', 0.24, 0.002),
      nose: measured('length', -0.239, 0.0001),
    });
    const last = noseBallasts(subject({ design: stub, batches })).at(-1)!.ballast;
    expect(isPresent(last) ? null : last.absent).toBe('lies beyond what weight in the nose can do');
  });
});
