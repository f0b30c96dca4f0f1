import { describe, expect, it } from 'vitest';
import { inspectedSetups } from '../../src/figures/inspect.ts';
import type { Setup } from '../../src/model/entry.ts';
import type { Inspection } from '../../src/model/ruling.ts';
import { design, entry, measured } from './example-design.ts';

const setup = (id: string | null, from: string | null, overrides: readonly string[] = []): Setup => ({
  id,
  from,
  change: null,
  design: design(),
  overrides,
});

const inspection = (date: string, values: Partial<Inspection>): Inspection => ({
  date,
  by: 'scales-team',
  span: null,
  wingArea: null,
  airframe: null,
  rubber: null,
  balance: null,
  ...values,
});

const grams = (mass: number) => measured('mass', mass / 1000, 0.0001);

function seen(
  setups: readonly [Setup, ...Setup[]],
  inspections: readonly Inspection[],
  thing: 'span' | 'wingArea' | 'airframe' | 'rubber' | 'balance',
): (number | null)[] {
  return inspectedSetups(entry(setups), inspections).map(
    ({ design: each }) => each.inspected?.[thing]?.value ?? null,
  );
}

describe('an inspection', () => {
  const three = (second: string[], third: string[]): [Setup, ...Setup[]] => [
    setup(null, null),
    setup('b', '2031-06-10', second),
    setup('c', '2031-08-01', third),
  ];

  it('holds from the setup in force on its date', () => {
    const weighed = (date: string) => [inspection(date, { airframe: grams(611) })];
    expect(seen(three([], []), weighed('2031-05-01'), 'airframe')).toEqual([0.611, 0.611, 0.611]);
    expect(seen(three([], []), weighed('2031-06-10'), 'airframe')).toEqual([null, 0.611, 0.611]);
    expect(seen(three([], []), weighed('2031-12-01'), 'airframe')).toEqual([null, null, 0.611]);
  });

  it.each([
    ['span', 'wing.span'],
    ['wingArea', 'wing.area'],
    ['wingArea', 'wing.chord'],
    ['wingArea', 'wing.panels'],
    ['airframe', 'mass.airframe'],
    ['airframe', 'mass.flying'],
    ['rubber', 'motors'],
    ['balance', 'balance'],
  ] as const)('of the %s ends where a setup writes %s', (thing, path) => {
    const measuredThing = [inspection('2031-05-01', { [thing]: grams(1000) })];
    expect(seen(three([], [path]), measuredThing, thing)).toEqual([1, 1, null]);
    expect(seen(three([path], []), measuredThing, thing)).toEqual([1, null, null]);
  });

  it('made of a setup holds though that very setup wrote the thing', () => {
    const weighed = [inspection('2031-06-11', { airframe: grams(598) })];
    expect(seen(three(['mass.airframe'], []), weighed, 'airframe')).toEqual([null, 0.598, 0.598]);
  });

  it('does not end with something else', () => {
    const all = [
      inspection('2031-05-01', {
        airframe: grams(611),
        rubber: grams(30.6),
        span: measured('length', 3.19, 0.002),
      }),
    ];
    const setups = three(['mass.parts.wing', 'wing.incidence', 'tailplane.area'], []);
    for (const thing of ['airframe', 'rubber', 'span'] as const)
      expect(seen(setups, all, thing)).toEqual(Array.from({ length: 3 }, () => expect.any(Number)));
  });

  it('is replaced by a later one of the same thing, whatever their order in the file', () => {
    const both = [
      inspection('2031-07-01', { airframe: grams(605) }),
      inspection('2031-05-01', { airframe: grams(611), rubber: grams(30.6) }),
    ];
    expect(seen(three([], []), both, 'airframe')).toEqual([0.611, 0.605, 0.605]);
    expect(seen(three([], []), both, 'rubber')).toEqual(
      Array.from({ length: 3 }, () => expect.closeTo(0.0306, 12)),
    );
  });

  it('marks its values as inspected and leaves the builder’s own beside them', () => {
    const [first] = inspectedSetups(entry([setup(null, null)]), [
      inspection('2031-05-01', { airframe: grams(611) }),
    ]);
    expect(first.design.inspected?.airframe?.origin).toBe('inspected');
    expect(first.design.mass.airframe?.value).toBe(0.612);
  });

  it('changes nothing where there is none', () => {
    const setups: [Setup] = [setup(null, null)];
    expect(inspectedSetups(entry(setups), [])).toBe(setups);
  });
});
