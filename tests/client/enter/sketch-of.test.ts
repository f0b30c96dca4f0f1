import { describe, expect, it } from 'vitest';
import { checked } from '../../../src/client/enter/checked.ts';
import { sketchOf } from '../../../src/client/enter/sketch-of.ts';

const nowhere = { challenge: 'c', id: 'e' };
const sketch = (fields: string) => {
  const text = `---\n${fields}---\n`;
  return sketchOf(text, checked(text, nowhere));
};

describe('the sketch of an unfinished entry', () => {
  it('needs neither name nor builder nor control', () => {
    const drawn = sketch(
      'wing:\n  span: 2 m\n  chord: 20 cm\nmass:\n  airframe: 300 g\nmotors:\n  - count: 1\n',
    );
    expect(drawn?.setups[0].design.wing.span.value).toBe(2);
  });

  it('leaves out what is wrong, and the least of it', () => {
    const drawn = sketch(
      [
        'name: A\nbuilder: b\ncontrol: free\nwing: { span: 2 m, chord: 20, area: 40 dm2 }\nmass: { airframe: 300 g }',
        'motors:\n  - count: 1\n    propeller: { diameter: 300, pitch: 400 mm }',
        'flights:\n  - { number: 1, date: 2026-05-09, time: 40 s }\n  - { number: 2 }\n',
      ].join('\n'),
    );
    expect(drawn?.setups[0].design.wing.area?.value).toBeCloseTo(0.4);
    expect(drawn?.setups[0].design.wing.chord).toBe(null);
    expect(drawn?.setups[0].design.motors[0]?.propeller?.diameter).toBe(null);
    expect(drawn?.flights.map(({ number }) => number)).toEqual([1]);
  });

  it('is none where span, mass or motor is missing, or the text cannot be read', () => {
    expect(sketch('mass: { airframe: 300 g }\nmotors: [{ count: 1 }]\n')).toBe(null);
    expect(sketch('wing: { span: 2 m }\nmotors: [{ count: 1 }]\n')).toBe(null);
    expect(sketch('wing: { span: 2 m }\nmass: { airframe: 300 g }\n')).toBe(null);
    expect(sketch('wing: { span: 2 m\n')).toBe(null);
  });
});
