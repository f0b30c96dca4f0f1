import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import type { Figure, PresentFigure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import type { Design } from '../../src/model/design.ts';
import { batch, design, flown, fullDesign, measured, motor, skein, subject } from './example-design.ts';

function figures(overrides: Partial<Design>, more: Partial<Subject> = {}): ReadonlyMap<string, Figure> {
  return evaluate(subject({ design: design(overrides), ...more }), 'model').entry;
}

function present(set: ReadonlyMap<string, Figure>, id: string): PresentFigure {
  const figure = set.get(id);
  if (figure === undefined || !('value' in figure))
    throw new Error(`${id} is absent: ${figure === undefined ? 'no such figure' : figure.absent}`);
  return figure;
}

function reason(set: ReadonlyMap<string, Figure>, id: string): string | null {
  const figure = set.get(id);
  return figure !== undefined && 'absent' in figure ? figure.absent : null;
}

describe('the wing', () => {
  it('has its loading by hand', () => {
    // 612 g + 2 · 15.5 g = 643 g; 0.643 kg · 9.80665 m/s² = 6.305676 N; / 0.876 m² = 7.198260 N/m²,
    // that is 643 g / 87.6 dm² = 7.340 g/dm².
    // u: mass √(3.06² + (2 · 0.1)²) = 3.0665 g of 643 g, 0.4769 %; area 2 %; together 2.0561 % → 0.14800 N/m².
    const loading = present(figures({}), 'wing-loading');
    expect(loading.value).toBeCloseTo(7.19826, 5);
    // 1 g/dm² is 0.1 kg/m².
    expect(loading.value / 9.80665 / 0.1).toBeCloseTo(7.34, 3);
    expect(loading.u).toBeCloseTo(0.148, 3);
    expect(loading.basis).toBe('measured');
    expect(loading.shares[0]!.input).toBe("the wing's area");
  });

  it('takes panels before area before chord', () => {
    const wing = fullDesign().wing;
    const area = measured('area', 0.5, 0.01);
    const chord = measured('length', 0.25, 0.0025);
    const areaOf = (set: ReadonlyMap<string, Figure>) => present(set, 'wing-area').value;
    // By hand: 2·(0.9·cos 3°·0.3 + 0.737·cos 18°·0.24) = 2·(0.269630 + 0.168223) = 0.875706 m².
    expect(areaOf(figures({ wing: { ...wing, area, chord } }))).toBeCloseTo(0.875706, 6);
    expect(areaOf(figures({ wing: { ...wing, panels: null, area, chord } }))).toBe(0.5);
    expect(areaOf(figures({ wing: { ...wing, panels: null, area: null, chord } }))).toBeCloseTo(0.8, 12);
  });

  it('says what it needs for an area', () => {
    const set = figures({ wing: { ...design().wing, area: null } });
    expect(reason(set, 'wing-area')).toBe("needs the wing's panels, area or chord");
    expect(reason(set, 'aspect-ratio')).toBe("needs the wing's panels, area or chord");
    expect(present(set, 'span').value).toBe(3.2);
  });

  it('does not count the span twice where the area is span times chord', () => {
    // AR = b²/(b·c) = b/c: u/AR = √(0.2² + 1²) % = 1.0198 %, not √(0.2² + 0.2² + …).
    const chord = measured('length', 0.25, 0.0025);
    const ratio = present(figures({ wing: { ...design().wing, area: null, chord } }), 'aspect-ratio');
    expect(ratio.value).toBeCloseTo(12.8, 12);
    expect(ratio.u / ratio.value).toBeCloseTo(Math.hypot(0.002, 0.01), 5);
  });

  it('is taken as straight without panels, and says so', () => {
    const chord = present(figures({}), 'mean-aerodynamic-chord');
    expect(chord.value).toBeCloseTo(0.876 / 3.2, 12);
    expect(chord.basis).toBe('partly assumed');
    expect(chord.assumptions).toEqual(['the wing is straight, with the same chord everywhere']);
    expect(present(figures({ wing: fullDesign().wing }), 'mean-aerodynamic-chord').basis).toBe('measured');
  });

  it('has an effective dihedral only where a panel states one', () => {
    const { wing } = fullDesign();
    const panels = wing.panels!.map((panel) => ({ ...panel, dihedral: null }));
    expect(reason(figures({ wing: { ...wing, panels } }), 'effective-dihedral')).toBe(
      "needs the dihedral of the wing's panels",
    );
    expect(present(figures({ wing }), 'effective-dihedral').value).toBeGreaterThan((3 * Math.PI) / 180);
  });

  it('gives its area to an inspection, and nothing else', () => {
    const { wing } = fullDesign();
    const inspected = {
      span: null,
      wingArea: { ...measured('area', 0.8, 0.004), origin: 'inspected' as const },
      airframe: null,
      rubber: null,
      balance: null,
    };
    const plain = figures({ wing });
    const set = figures({ wing, inspected });
    expect(present(set, 'wing-area')).toMatchObject({
      value: 0.8,
      u: expect.closeTo(0.004, 12),
      basis: 'inspected',
    });
    expect(present(set, 'mean-chord').value).toBe(0.25);
    expect(present(set, 'mean-aerodynamic-chord').value).toBe(present(plain, 'mean-aerodynamic-chord').value);
  });
});

describe('an inspected span or balance', () => {
  const nothing = { span: null, wingArea: null, airframe: null, rubber: null, balance: null };
  const seen = (value: number, u: number) => ({
    ...measured('length', value, u),
    origin: 'inspected' as const,
  });

  it('stands instead of the builder’s own', () => {
    const { wing } = design();
    const inspected = { ...nothing, span: seen(3.19, 0.001), balance: seen(0.1, 0.001) };
    const set = figures({ wing, inspected, balance: measured('length', 0.104, 0.002) });
    expect(present(set, 'span')).toMatchObject({ value: 3.19, basis: 'inspected' });
    expect(present(set, 'aspect-ratio').value).toBeCloseTo(3.19 ** 2 / 0.876, 12);
    // By hand, a wing taken as straight: 100 mm of a chord of 876000/3190 = 274.608 mm.
    expect(present(set, 'balance-point').value).toBeCloseTo(0.1 / 0.274608, 5);
  });
});

describe('a tailless model', () => {
  it('is not asked for the tailplane it does not have', () => {
    const set = figures({ layout: 'tailless' });
    expect(['tail-area', 'tail-volume', 'decalage'].map((id) => reason(set, id))).toEqual(
      Array(3).fill('a tailless model has no tailplane'),
    );
    // Its lifting area is the wing's alone, 87.6 dm².
    expect(present(set, 'lifting-area').value).toBe(0.876);
  });
});

describe('masses', () => {
  const grams = (set: ReadonlyMap<string, Figure>) =>
    ['airframe-mass', 'rubber-mass', 'flying-mass'].map((id) => present(set, id).value * 1000);

  it('are airframe and rubber', () => {
    const set = figures({});
    expect(grams(set)).toEqual([612, 31, 643].map((mass) => expect.closeTo(mass, 9)));
    expect(present(set, 'rubber-share').value).toBeCloseTo(31 / 643, 12);
  });

  it('never leave less than nothing for the airframe', () => {
    // 31 g of rubber in a model of 30 g: one of the two is mistaken.
    const flying = measured('mass', 0.03, 0.0003);
    const set = figures({ mass: { airframe: null, flying, parts: {} } });
    const why = 'needs a flying mass greater than that of the rubber';
    expect([reason(set, 'airframe-mass'), reason(set, 'rubber-share')]).toEqual([why, why]);
    expect(present(set, 'flying-mass').value).toBe(0.03);
  });

  it('or the weighed whole less the rubber', () => {
    const set = figures({ mass: { airframe: null, flying: measured('mass', 0.643, 0.003), parts: {} } });
    expect(grams(set)).toEqual([612, 31, 643].map((mass) => expect.closeTo(mass, 9)));
    // √(3² + 0.2²) g.
    expect(present(set, 'airframe-mass').u * 1000).toBeCloseTo(Math.hypot(3, 0.2), 9);
  });

  it('follow a flight that states its own', () => {
    const mass = measured('mass', 0.649, 0.003);
    expect(grams(figures({}, { mass }))).toEqual([612, 31, 649].map((each) => expect.closeTo(each, 9)));
    const flying = { airframe: null, flying: measured('mass', 0.643, 0.003), parts: {} };
    expect(grams(figures({ mass: flying }, { mass }))).toEqual(
      [618, 31, 649].map((each) => expect.closeTo(each, 9)),
    );
  });

  it('follow an inspection, which is not the builder’s any more', () => {
    const seen = (value: number) => ({ ...measured('mass', value, 0.0001), origin: 'inspected' as const });
    const inspected = { span: null, wingArea: null, airframe: seen(0.62), rubber: seen(0.03), balance: null };
    const set = figures({ inspected });
    expect(grams(set)).toEqual([620, 30, 650].map((mass) => expect.closeTo(mass, 9)));
    expect(present(set, 'flying-mass').basis).toBe('inspected');
    expect(present(set, 'wing-loading').basis).toBe('measured');
  });

  it('use geometry for a skein that was not weighed', () => {
    // By hand: 10 · 3.2 mm · 1.1 mm · 480 mm = 16.896 cm³ · 0.93 g/cm³ = 15.71328 g, twice 31.42656 g.
    const set = figures({ motors: [motor({ skein: skein({ mass: null }) })] });
    expect(present(set, 'rubber-mass').value * 1000).toBeCloseTo(31.42656, 9);
    expect(present(set, 'rubber-mass').basis).toBe('partly assumed');
  });

  it('say which skein is missing, and stay with the weighed whole where there is one', () => {
    const motors = [motor(), motor({ skein: skein({ mass: null, length: null }) })];
    const text = 'needs the mass of the skein of motor 2, or its strip, strands and length';
    expect(reason(figures({ motors }), 'flying-mass')).toBe(text);
    const both = {
      airframe: measured('mass', 0.612, 0.003),
      flying: measured('mass', 0.66, 0.003),
      parts: {},
    };
    const set = figures({ motors, mass: both });
    expect(present(set, 'flying-mass').value).toBe(0.66);
    expect(reason(set, 'rubber-mass')).toBe(text);
  });
});

describe('the tail and the balance', () => {
  // The second motor's strip comes from its batch.
  const batches = new Map([['fen-a', batch()]]);
  const set = figures(fullDesign(), { batches });

  it('have their volumes by hand', () => {
    // Wing 0.8757062 m², mean aerodynamic chord 0.2788693 m (from the panels), span 3.2 m:
    // 0.16 · 1.35/(0.8757062 · 0.2788693) = 0.884495; 0.07 · 1.4/(0.8757062 · 3.2) = 0.0349718.
    expect(present(set, 'tail-volume').value).toBeCloseTo(0.884495, 5);
    expect(present(set, 'fin-volume').value).toBeCloseTo(0.0349718, 6);
    expect(present(set, 'lifting-area').value).toBeCloseTo(1.035706, 6);
    expect(present(set, 'decalage').value).toBeCloseTo((3 * Math.PI) / 180, 12);
  });

  it('have the same balance as a length and as a share', () => {
    const share = present(set, 'balance-point').value;
    const again = figures({ ...fullDesign(), balance: measured('share', share, 0.0001) }, { batches });
    expect(present(again, 'balance-point').value).toBe(share);
    expect(present(again, 'trim-ballast').value).toBeCloseTo(present(set, 'trim-ballast').value, 12);
    expect(present(set, 'static-margin').value).toBeCloseTo(present(set, 'neutral-point').value - share, 12);
  });

  it('know a balance given as a share no better than 2 mm, unless its ± is stated', () => {
    const chord = present(set, 'mean-aerodynamic-chord').value;
    const balance = measured('share', 0.38, 0.0029);
    const floored = present(figures({ ...fullDesign(), balance }), 'balance-point');
    expect(floored.u).toBeCloseTo(0.002 / chord, 12);
    const stated = { ...balance, written: '38 % ± 0.29 %' };
    expect(present(figures({ ...fullDesign(), balance: stated }), 'balance-point').u).toBeCloseTo(0.0029, 12);
  });

  it('rest on a wing taken as straight where its shape is not stated', () => {
    const straight = 'the wing is straight, with the same chord everywhere';
    const plain = figures({
      tailplane: fullDesign().tailplane,
      balance: measured('length', 0.104, 0.002),
      nose: measured('length', 0.31, 0.001),
    });
    // The tail volume states no assumption itself: it comes along with the mean aerodynamic chord.
    expect(present(plain, 'tail-volume')).toMatchObject({ basis: 'partly assumed', assumptions: [straight] });
    expect(present(plain, 'balance-point')).toMatchObject({
      basis: 'partly assumed',
      assumptions: [straight],
    });
    expect(present(plain, 'trim-ballast')).toMatchObject({ basis: 'measured', assumptions: [] });
    const share = figures({ balance: measured('share', 0.38, 0.003), nose: measured('length', 0.31, 0.001) });
    expect(present(share, 'balance-point')).toMatchObject({ basis: 'measured', assumptions: [] });
    expect(present(share, 'trim-ballast').assumptions).toEqual([straight]);
    const { wing } = fullDesign();
    const panels = wing.panels!.map((panel) => ({ ...panel, sweep: null }));
    const unswept = figures({ wing: { ...wing, panels }, balance: measured('length', 0.104, 0.002) });
    expect(present(unswept, 'balance-point')).toMatchObject({
      basis: 'partly assumed',
      assumptions: ['panels of the wing without a stated sweep have a straight leading edge'],
    });
    expect(present(unswept, 'wing-area').basis).toBe('measured');
  });

  it('need the nose ballast of the law of the lever', () => {
    // By hand: 653.588 g over 104 + 310 mm is 1.5787 g/mm.
    expect(present(set, 'trim-ballast').value).toBeCloseTo(1.5787, 4);
  });

  it('are absent with the reason where something is missing', () => {
    const bare = figures({});
    expect(reason(bare, 'tail-volume')).toBe("needs the tailplane's area");
    expect(reason(bare, 'fin-volume')).toBe("needs the fin's area");
    expect(reason(bare, 'balance-point')).toBe('needs the balance');
    expect(reason(bare, 'trim-ballast')).toBe("needs the nose's length");
    expect(reason(bare, 'decalage')).toBe("needs the wing's incidence");
    const tail = { ...fullDesign().tailplane!, arm: null };
    expect(reason(figures({ tailplane: tail }), 'tail-volume')).toBe("needs the tailplane's arm");
  });

  it('keep to their layouts', () => {
    const tailless = figures({ layout: 'tailless' });
    expect(reason(tailless, 'tail-area')).toBe('a tailless model has no tailplane');
    expect(present(tailless, 'lifting-area').value).toBe(0.876);
    expect(reason(figures({ ...fullDesign(), layout: 'canard' }), 'neutral-point')).toBe(
      'is worked out only for models with the tailplane behind the wing',
    );
  });
});

describe('a model built to another scale', () => {
  it('keeps every figure that is a ratio of lengths, with its relative uncertainty', () => {
    const pure = [
      'aspect-ratio',
      'tail-volume',
      'fin-volume',
      'effective-dihedral',
      'balance-point',
      'neutral-point',
      'static-margin',
    ];
    const plain = figures(fullDesign());
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (scale) => {
        const scaled = figures(scaleLengths(fullDesign(), scale));
        for (const id of pure) {
          expect(present(scaled, id).value).toBeCloseTo(present(plain, id).value, 9);
          expect(present(scaled, id).u).toBeCloseTo(present(plain, id).u, 9);
        }
        const area = present(scaled, 'wing-area').value / present(plain, 'wing-area').value;
        expect(area / scale ** 2).toBeCloseTo(1, 9);
        const chord = present(scaled, 'mean-aerodynamic-chord').value;
        expect(chord / (scale * present(plain, 'mean-aerodynamic-chord').value)).toBeCloseTo(1, 9);
      }),
      { seed: 21, numRuns: 25 },
    );
  });
});

describe('a figure set', () => {
  it('holds the figures asked for, and those only', () => {
    const whole = subject({ design: fullDesign(), flown: flown() });
    const model = evaluate(whole, 'model');
    const flight = evaluate(whole, 'flight');
    const all = evaluate(whole, 'all');
    expect(model.entry.has('wing-loading')).toBe(true);
    expect(model.entry.has('best-time')).toBe(false);
    expect(flight.entry.has('best-time')).toBe(true);
    expect(flight.entry.has('wing-loading')).toBe(false);
    expect(all.entry.size).toBe(model.entry.size + flight.entry.size);
    expect(all.motors).toHaveLength(2);
    expect(model.motors[0]!.has('skein-section')).toBe(true);
    expect(all.entry.get('flying-mass')).toEqual(model.entry.get('flying-mass'));
    expect(all.entry.get('energy-per-gram')).toEqual(flight.entry.get('energy-per-gram'));
  });
});

/** Every length by the scale, every area by its square, uncertainties too. */
function scaleLengths<T>(value: T, scale: number): T {
  if (Array.isArray(value)) return value.map((item) => scaleLengths(item, scale)) as T;
  if (value === null || typeof value !== 'object') return value;
  if ('kind' in value && 'u' in value && 'value' in value) {
    const factor = value.kind === 'length' ? scale : value.kind === 'area' ? scale * scale : 1;
    return { ...value, value: Number(value.value) * factor, u: Number(value.u) * factor };
  }
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, scaleLengths(item, scale)]),
  ) as T;
}
