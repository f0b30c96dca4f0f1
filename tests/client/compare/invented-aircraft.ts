import type { ComparedAircraft, ComparedNumber } from '../../../src/compare/aircraft.ts';

/** A number shown as it stands. */
export function number(value: number, u: number): ComparedNumber & { readonly value: number } {
  const text = `${value} ± ${u}`;
  return { value, u, shown: { metric: text, imperial: text } };
}

/** An invented aircraft: 40 m × 0.5 / 0.25 m/s = 80 s unless a test changes it. */
export function aircraft(name: string, changes: Partial<ComparedAircraft> = {}): ComparedAircraft {
  return {
    id: `spring/${name.toLowerCase()}`,
    name,
    builders: 'M. Thorn',
    challenge: { id: 'spring', title: 'Spring Trial 2031' },
    address: `/club/entries/spring/${name.toLowerCase()}/`,
    result: 'place 1, 80.0 s',
    figuresOf: 'Figures of the aircraft as first entered and flight 1',
    shape: null,
    span: null,
    flown: {
      told: '80.0 s',
      time: number(80, 0.1),
      use: number(0.5, 0.02),
      height: number(40, 0.4),
      sink: number(0.25, 0.01),
    },
    figures: [],
    facts: [],
    ...changes,
  };
}
