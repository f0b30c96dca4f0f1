import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import { type Figure, isPresent, type PresentFigure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import type { AfterRun, Propeller } from '../../src/model/design.ts';
import type { Glide, Weather } from '../../src/model/entry.ts';
import { design, flown, fullDesign, glide, measured, motor, subject } from './example-design.ts';

function figures(of: Partial<Subject>): (id: string) => PresentFigure {
  const { entry } = evaluate(subject(of), 'flight');
  return (id) => present(entry.get(id));
}

function present(figure: Figure | undefined): PresentFigure {
  if (!isPresent(figure)) throw new Error(`absent: ${JSON.stringify(figure)}`);
  return figure;
}

function within(figure: PresentFigure, expected: number, relative: number): void {
  expect(Math.abs(figure.value / expected - 1), `${figure.id}: ${figure.value}`).toBeLessThan(relative);
}

/** Weather in SI, whatever it does not name left out. */
function weather(overrides: Partial<Weather>): Weather {
  const nothing = {
    wind: null,
    temperature: null,
    pressure: null,
    humidity: null,
    elevation: null,
    surface: null,
  };
  return { ...nothing, ...overrides };
}

const thrown = (...glides: Partial<Glide>[]) =>
  glides.map((each) => ({ glide: glide(each), design: design() }));

describe('test glides', () => {
  // By hand: 30 m from 3 m in 6 s and 45 m from 3 m in 5 s.
  const two = thrown(
    { height: measured('length', 3, 0), distance: measured('length', 30, 0), time: measured('time', 6, 0) },
    { height: measured('length', 3, 0), distance: measured('length', 45, 0), time: measured('time', 5, 0) },
  );

  it('give sinking speed, glide ratio and gliding speed as the means of their quotients', () => {
    const of = figures({ glides: two });
    within(of('sink-speed'), (3 / 6 + 3 / 5) / 2, 1e-12);
    within(of('glide-ratio'), (10 + 15) / 2, 1e-12);
    within(of('glide-speed'), (30 / 6 + 45 / 5) / 2, 1e-12);
    expect(of('sink-speed').basis).toBe('measured');
    expect(of('sink-speed').assumptions).toEqual([]);
  });

  it('are no surer than 15 %, and no surer than their scatter', () => {
    const of = figures({ glides: two });
    expect(of('sink-speed').u / of('sink-speed').value).toBeCloseTo(0.15, 12);
    // 10 and 15: s/√2 = 2.5, a fifth of 12.5.
    expect(of('glide-ratio').u).toBeCloseTo(2.5, 12);
  });

  it('count their readings to that', () => {
    // By hand: one throw, 9 % on both readings: 12.73 %; together with what is beyond them, 20 %.
    const one = thrown({
      height: measured('length', 3, 0.27),
      distance: measured('length', 30, 2.7),
      time: measured('time', 6, 0.1),
    });
    const ratio = figures({ glides: one })('glide-ratio');
    expect(ratio.u / ratio.value).toBeCloseTo(0.2, 3);
    const share = ratio.shares.find(({ input }) => input === 'the heights of the test glides')!;
    expect(share.share).toBeCloseTo(0.09 ** 2 / 0.2 ** 2, 2);
  });

  it('give only what they measured; the polar gives the rest', () => {
    const untimed = thrown({ height: measured('length', 3, 0.1), distance: measured('length', 30, 1) });
    const of = figures({ glides: untimed });
    expect(of('glide-ratio').basis).toBe('measured');
    expect(of('sink-speed').basis).toBe('partly assumed');
    expect(of('glide-speed').basis).toBe('partly assumed');
  });
});

describe('the polar of a model', () => {
  // The example: 0.643 kg, 0.876 m², 3.2 m, no word of its propellers. Worked out apart from this project, in Python from the
  // formulas: CIPM-2007, Sutherland, 200,000 lift coefficients up to 1, the slowest sink taken.
  it('gives sinking speed, glide ratio, gliding speed and Reynolds number', () => {
    const of = figures({});
    within(of('sink-speed'), 0.239167389322, 1e-9);
    within(of('glide-ratio'), 14.353462386, 1e-9);
    within(of('glide-speed'), 3.43288012649, 1e-9);
    within(of('reynolds-number'), 64157.9355559, 1e-9);
    // 0.643 kg · 9.80665 m/s² · 0.239167 m/s.
    within(of('power-to-stay-up'), 0.643 * 9.80665 * 0.239167389322, 1e-9);
  });

  it('says what it assumes', () => {
    const sink = figures({})('sink-speed');
    expect(sink.basis).toBe('partly assumed');
    expect(sink.assumptions).toEqual([
      'the wing is straight, with the same chord everywhere',
      'the field lies at sea level',
      'the air is 0 ± 8 K warmer than the standard atmosphere',
      'the air’s pressure is 0 ± 10 hPa above that of the standard atmosphere',
      'the air’s humidity is 50 ± 25 %',
      'the profile drag is 1.3 ± 0.3 times that of a laminar flat plate',
      'fuselage and tail have a drag coefficient of 0.012 ± 0.006 on the wing area',
      'propellers without a diameter have a drag coefficient of 0.01 ± 0.008 on the wing area, all together',
      'the span efficiency is 0.80 ± 0.08',
      'lift coefficients up to 1.0 ± 0.1 can be flown',
    ]);
  });

  it('takes the air of the flight where it was measured', () => {
    const hot = weather({
      temperature: measured('temperature', 300.15, 0.5),
      pressure: measured('pressure', 90_000, 100),
      humidity: measured('share', 0.2, 0.02),
    });
    const of = figures({ flown: flown({ weather: hot }) });
    within(of('sink-speed'), 0.261892213118, 1e-9);
    within(of('reynolds-number'), 57406.897841, 1e-9);
    for (const assumption of of('sink-speed').assumptions) expect(assumption).not.toMatch(/\bair\b|field/);
  });

  it('takes the standard atmosphere at the field’s elevation for what was not measured', () => {
    const high = weather({ elevation: measured('length', 1500, 5) });
    const of = figures({ flown: flown({ weather: high }) });
    within(of('glide-speed'), 3.6914520197, 1e-7);
    expect(of('glide-speed').assumptions).not.toContain('the field lies at sea level');
  });

  describe('adds for propellers that no longer drive', () => {
    /** Drag coefficient of the example with such a propeller, beyond that with none to speak of. */
    function drag(after: AfterRun | null, diameter = true, counts = [2]): number {
      const propeller: Propeller = {
        diameter: diameter ? measured('length', 0.32, 0.0032) : null,
        pitch: null,
        blades: null,
        after,
      };
      const motors = counts.map((count) => motor({ count, propeller }));
      const of = figures({ design: design({ motors }) });
      // At the usable lift coefficient of 1 the glide ratio is 1/C_D.
      return 1 / of('glide-ratio').value - 0.0596696011811;
    }

    // Two discs of 0.32 m on 0.876 m²: 0.160850/0.876 = 0.183618. Coefficients: order of magnitude from practice, no source.
    it.each([
      ['folds', 0.005],
      ['freewheels', 0.02],
      ['stops', 0.03],
      [null, 0.01],
    ] as const)('that %s', (after, coefficient) => {
      expect(Math.abs(drag(after) - coefficient * 0.183618)).toBeLessThan(1e-7);
    });

    it('nothing where they turn until the landing, whatever their size', () => {
      expect(Math.abs(drag('never-stops'))).toBeLessThan(1e-9);
      expect(Math.abs(drag('never-stops', false))).toBeLessThan(1e-9);
    });

    it('once for all of unknown size', () => {
      expect(Math.abs(drag('folds', false, [2]) - 0.01)).toBeLessThan(1e-9);
      expect(Math.abs(drag('folds', false, [1, 1]) - 0.01)).toBeLessThan(1e-9);
    });
  });

  it('is absent with what it needs', () => {
    const wing = { ...design().wing, area: null };
    const { entry } = evaluate(subject({ design: design({ wing }) }), 'flight');
    expect(entry.get('sink-speed')).toMatchObject({ absent: "needs the wing's panels, area or chord" });
  });
});

describe('the spiral balance', () => {
  const whole = () => ({ ...fullDesign(), motors: [motor()] });

  it('is the fin’s arm in spans times degrees of effective dihedral over the polar’s lift', () => {
    const of = { design: whole() };
    const dihedral = present(evaluate(subject(of), 'model').entry.get('effective-dihedral')).value;
    // C_L is at the usable 1 for such a wing (as of the example above).
    within(figures(of)('spiral-balance'), ((1.4 / 3.2) * dihedral * 180) / Math.PI, 1e-12);
  });

  it('takes the polar’s lift even where the glide was measured', () => {
    const glides = thrown({
      height: measured('length', 3, 0.1),
      distance: measured('length', 30, 1),
      time: measured('time', 9, 0.1),
    });
    const polar = figures({ design: whole() })('spiral-balance');
    expect(figures({ design: whole(), glides })('spiral-balance')).toEqual(polar);
  });

  it('needs the fin’s arm', () => {
    const { entry } = evaluate(subject({ design: { ...whole(), fin: null } }), 'flight');
    expect(entry.get('spiral-balance')).toMatchObject({ absent: "needs the fin's arm" });
  });
});
