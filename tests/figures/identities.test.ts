import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import { isPresent } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import { glideAt } from '../../src/flight/polar.ts';
import { design, flown, fullDesign, measured, motor, skein, subject } from './example-design.ts';

// Relations between figures that hold whatever the aircraft: mechanics and the definitions of the quantities, not our code.

const gravity = 9.80665;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyCraft = fc.record({
  span: between(0.5, 5),
  chord: between(0.05, 0.4),
  airframe: between(0.005, 2),
  rubber: between(0.001, 0.1),
  count: fc.integer({ min: 1, max: 8 }),
  breaks: between(300, 1500),
  share: between(0.3, 1),
  diameter: between(0.1, 0.6),
  balance: between(0.02, 0.2),
});

type Craft = typeof anyCraft extends fc.Arbitrary<infer T> ? T : never;

function subjectOf(craft: Craft): Subject {
  const { wing, ...rest } = fullDesign();
  return subject({
    design: design({
      ...rest,
      wing: {
        ...wing,
        panels: null,
        span: measured('length', craft.span, 0.002 * craft.span),
        area: measured('area', craft.span * craft.chord, 0.02 * craft.span * craft.chord),
      },
      balance: measured('length', craft.balance, 0.002),
      mass: { airframe: measured('mass', craft.airframe, 0.005 * craft.airframe), flying: null, parts: {} },
      motors: [
        motor({
          count: craft.count,
          breakTurns: [measured('turns', craft.breaks, 0.05 * craft.breaks)],
          skein: skein({ mass: measured('mass', craft.rubber, 0.005 * craft.rubber) }),
          propeller: {
            diameter: measured('length', craft.diameter, 0.01 * craft.diameter),
            pitch: null,
            blades: 2,
            after: 'freewheels',
          },
        }),
      ],
    }),
    flown: flown({
      turns: [measured('turns', craft.breaks * craft.share, 2)],
      launchHeight: measured('length', 1.8, 0.05),
      drop: measured('length', 0, 0.05),
    }),
  });
}

function valuesOf(craft: Craft): (id: string) => number {
  const { entry, motors } = evaluate(subjectOf(craft), 'all');
  return (id) => {
    const figure = motors[0]?.get(id) ?? entry.get(id);
    if (!isPresent(figure)) throw new Error(`absent: ${id}`);
    return figure.value;
  };
}

function same(one: number, other: number): void {
  expect(one / other).toBeCloseTo(1, 9);
}

describe('the figures of any aircraft', () => {
  it('fit together', () => {
    fc.assert(
      fc.property(anyCraft, (craft) => {
        const of = valuesOf(craft);
        const weight = of('flying-mass') * gravity;
        same(of('wing-loading') * of('wing-area'), weight);
        same(of('aspect-ratio') * of('mean-chord'), of('span'));
        same(of('airframe-mass') + of('rubber-mass'), of('flying-mass'));
        same(of('rubber-share') * of('flying-mass'), of('rubber-mass'));
        expect(of('neutral-point') - of('balance-point')).toBeCloseTo(of('static-margin'), 12);
        // Tailplane 16 dm² at 1.35 m, fin 7 dm² at 1.4 m; one volume goes by the chord, the other by the span.
        same(of('tail-volume') / of('fin-volume'), (0.16 * 1.35 * of('span')) / (0.07 * 1.4 * craft.chord));
      }),
      { seed: 21, numRuns: 100 },
    );
  });

  it('keep the energy of the rubber, however it is told', () => {
    fc.assert(
      fc.property(anyCraft, (craft) => {
        const of = valuesOf(craft);
        const weight = of('flying-mass') * gravity;
        same(of('energy-per-gram') * of('flying-mass'), of('stored-energy'));
        same(of('energy-per-gram-of-rubber') * of('rubber-mass'), of('stored-energy'));
        same(of('energy-height') * weight, of('stored-energy'));
        // Work of a torque over its turns, of one motor of so many.
        const turns = craft.breaks * craft.share;
        same(2 * Math.PI * of('mean-torque') * turns * craft.count, of('stored-energy'));
        same(of('wound-share'), craft.share);
      }),
      { seed: 22, numRuns: 100 },
    );
  });

  it('glide down a slope: distance over height is speed over sink, within the small angle of the polar', () => {
    fc.assert(
      fc.property(anyCraft, (craft) => {
        const of = valuesOf(craft);
        same(of('glide-ratio') * of('sink-speed'), of('glide-speed'));
        same(of('power-to-stay-up'), of('flying-mass') * gravity * of('sink-speed'));
        same(of('duration-per-turn') * craft.breaks * craft.share, of('best-time'));
        same(of('duration-per-gram-of-rubber') * of('rubber-mass'), of('best-time'));
      }),
      { seed: 23, numRuns: 100 },
    );
  });

  it('predict the time of which the energy is used up with the efficiency of the propellers', () => {
    fc.assert(
      fc.property(anyCraft, (craft) => {
        const of = valuesOf(craft);
        // Of all the energy E + m·g·h, efficiency · E + m·g·h is turned into time at the predicted time.
        const efficiency = craft.count === 1 ? 0.65 : 0.5;
        const lift = of('flying-mass') * gravity * 1.8;
        const used = (of('energy-use') * of('predicted-time')) / of('best-time');
        same(used, (efficiency * of('stored-energy') + lift) / (of('stored-energy') + lift));
      }),
      { seed: 24, numRuns: 100 },
    );
  });

  it('say the same of a model of which the mass is given as a whole', () => {
    fc.assert(
      fc.property(anyCraft, (craft) => {
        const of = valuesOf(craft);
        const whole = subjectOf(craft);
        const total = craft.airframe + craft.rubber * craft.count;
        const { entry } = evaluate(
          {
            ...whole,
            design: {
              ...whole.design,
              mass: { airframe: null, flying: measured('mass', total, 0.005 * total), parts: {} },
            },
          },
          'all',
        );
        for (const id of ['flying-mass', 'airframe-mass', 'wing-loading', 'predicted-time']) {
          const figure = entry.get(id);
          same(isPresent(figure) ? figure.value : Number.NaN, of(id));
        }
      }),
      { seed: 25, numRuns: 60 },
    );
  });
});

describe('models alike but for their size', () => {
  it('sink with the root of it, where friction does not ask for the Reynolds number', () => {
    // Froude's law of similarity: n times the lengths and n³ times the mass, √n times the speeds.
    fc.assert(
      fc.property(between(0.2, 5), between(0.1, 1.2), (size, lift) => {
        const glider = {
          mass: 0.1,
          wingArea: 0.1,
          chord: 0.1,
          aspectRatio: 10,
          density: 1.225,
          viscosity: 1.8e-5,
          plateFactor: 0,
          fixedDrag: 0.04,
          spanEfficiency: 0.8,
          usableLift: 1.2,
        };
        const larger = {
          ...glider,
          mass: glider.mass * size ** 3,
          wingArea: glider.wingArea * size ** 2,
          chord: glider.chord * size,
        };
        same(glideAt(larger, lift).sink / glideAt(glider, lift).sink, Math.sqrt(size));
      }),
      { seed: 26, numRuns: 100 },
    );
  });
});
