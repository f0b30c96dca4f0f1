import { describe, expect, it } from 'vitest';
import { type Figure, isPresent, type PresentFigure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import { timeParts } from '../../src/figures/time-parts.ts';
import { design, flown, glide, measured, skein, subject } from './example-design.ts';

function present(figure: Figure): PresentFigure {
  if (!isPresent(figure)) throw new Error(`${figure.id} is absent: ${figure.absent}`);
  return figure;
}

/** Thrown once: 3 m in 6 s, so 0.5 m/s; the mass flown is that of the throw. */
const glides = [
  {
    glide: glide({ height: measured('length', 3, 0.01), time: measured('time', 6, 0.1) }),
    design: design(),
  },
];
const level = { launchHeight: measured('length', 2, 0.05), drop: measured('length', 1, 0.1) };

function parts(of: Partial<Subject>) {
  const { time, use, height, sink } = timeParts(subject({ glides, ...of }));
  return { time: present(time), use: present(use), height: present(height), sink: present(sink) };
}

describe('the parts of a time in the air', () => {
  it('multiply to it', () => {
    // From the energy balance: m·g·w·t = use · (E + m·g·h), so t = use · (E/(m·g) + h) / w.
    const { time, use, height, sink } = parts({ flown: flown(level) });
    expect(time.value).toBe(42);
    expect((use.value * height.value) / sink.value / 42).toBeCloseTo(1, 12);
    expect(sink.value).toBeCloseTo(0.5, 12);
  });

  it('count the height of the launch above the landing', () => {
    const low = parts({ flown: flown(level) }).height.value;
    const high = parts({ flown: flown({ ...level, drop: measured('length', 4, 0.1) }) }).height.value;
    expect(high - low).toBeCloseTo(3, 10);
  });

  it('leave out the energy of the turns that were still in', () => {
    const turns = [measured('turns', 300, 2)];
    const all = parts({ flown: flown(level) }).height.value;
    const rest = parts({ flown: flown({ ...level, turnsLeft: turns }) }).height.value;
    // What 300 turns hold is what a flight wound to 300 turns starts with, above its 3 m.
    const held = parts({ flown: flown({ ...level, turns }) }).height.value - 3;
    expect(all - rest).toBeCloseTo(held, 10);
  });

  it('say what is missing', () => {
    const without = timeParts(subject({ glides }));
    expect(without.time).toMatchObject({ absent: 'needs a flight that can count' });
    expect(without.use).toMatchObject({ absent: 'needs a flight that can count' });
    const unweighed = design();
    const motors = unweighed.motors.map((motor) => ({
      ...motor,
      skein: skein({ mass: null, strip: null }),
    }));
    const { height, sink } = timeParts(
      subject({ glides, design: { ...unweighed, motors }, flown: flown(level) }),
    );
    expect(isPresent(height)).toBe(false);
    expect('absent' in height && height.absent).toMatch(/^needs /);
    expect('absent' in sink && sink.absent).toMatch(/^needs /);
  });
});
