import { describe, expect, it } from 'vitest';
import { defaults } from '../../src/figures/defaults.ts';

/** The factor from the unit of the words to SI. */
const factors = [
  ['rubber-density', 1000],
  ['break-energy', 1000],
  ['break-stretch', 1],
  ['turns-constant', 1],
  ['wound-share', 0.01],
  ['efficiency-of-one', 0.01],
  ['efficiency-of-several', 0.01],
  ['profile-drag-factor', 1],
  ['parasite-drag', 1],
  ['propeller-drag-folded', 1],
  ['propeller-drag-freewheeling', 1],
  ['propeller-drag-stopped', 1],
  ['propeller-drag-unknown', 1],
  ['propeller-drag-without-diameter', 1],
  ['span-efficiency', 1],
  ['usable-lift', 1],
  ['air-temperature', 1],
  ['air-pressure', 100],
  ['air-humidity', 0.01],
  ['bench-air', 1],
  ['launch-height', 1],
  ['drop', 1],
] as const;

describe('a default', () => {
  it.each(factors)('%s is what its words say', (id, factor) => {
    const { quantity, assumption } = defaults[id];
    const [, value, u] = /([\d.]+) ± ([\d.]+)/.exec(assumption)!;
    expect(quantity.value).toBeCloseTo(Number(value) * factor, 12);
    expect(quantity.u).toBeCloseTo(Number(u) * factor, 12);
    // Level ground is named, but makes no figure assumed.
    expect(quantity.origin).toBe(id === 'drop' ? 'exact' : 'assumed');
  });

  it('of the rubber lies within what is published', () => {
    // Density: natural rubber 0.93 (handbook), vulcanised gum sheet 0.95 g/cm³ (data sheet). Stretch at break: the last
    // point of Treloar 1944 is 7.6. Energy at break: reported from 9 to 14.4 J/g. Turns constant: practice 9 to 13.
    expect(defaults['rubber-density'].quantity).toMatchObject({ value: 930, u: 20 });
    expect(defaults['break-stretch'].quantity).toMatchObject({ value: 7.6, u: 0.5 });
    const within = (id: 'break-energy' | 'turns-constant', low: number, high: number) => {
      const { value, u } = defaults[id].quantity;
      expect(value - u).toBeGreaterThan(low);
      expect(value + u).toBeLessThan(high);
    };
    within('break-energy', 9000, 14_400);
    within('turns-constant', 9, 13);
  });

  it('of the propeller lies within what is measured', () => {
    // UIUC Propeller Data Site, DA4002 at 2000 to 5000 turns a minute: peaks of 0.63 to 0.69.
    const { value, u } = defaults['efficiency-of-one'].quantity;
    expect(value).toBeGreaterThan(0.63);
    expect(value).toBeLessThan(0.69);
    expect(value + 2 * u).toBeLessThan(1);
    expect(defaults['efficiency-of-several'].quantity.value).toBeLessThan(value);
  });

  it('is in the list above, whichever it is', () => {
    expect(factors.map(([id]) => id)).toEqual(Object.keys(defaults));
  });
});
