import { describe, expect, it } from 'vitest';
import { type Defaults, defaults } from '../../src/figures/defaults.ts';
import { evaluate } from '../../src/figures/evaluate.ts';
import type { Figure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import type { StretchTest } from '../../src/model/batch.ts';
import type { Quantity } from '../../src/quantities/quantity.ts';
import { batch, flown, fullDesign, measured, motor, skein, stretchTest, subject } from './example-design.ts';

// JCGM 101:2008: draw every input from its distribution, work out the figure each time, take the standard deviation. Normal
// for what was measured, a rectangle of half-width √3·u for defaults. Independent of the law of propagation.

/** mulberry32: a small generator with a fixed seed, so that the test is the same each time. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const uniform = generator(20310509);
const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());

function isQuantity(value: object): value is Quantity {
  return 'kind' in value && 'value' in value && 'u' in value && 'origin' in value;
}

/** A copy with every measurement drawn, and then without uncertainty. */
function draw<T>(value: T): T {
  if (Array.isArray(value)) return value.map((item) => draw(item)) as T;
  if (value === null || typeof value !== 'object') return value;
  if (value instanceof Map) return new Map([...value].map(([key, item]) => [key, draw(item)])) as T;
  if (isQuantity(value)) {
    const error = value.origin === 'assumed' ? Math.sqrt(3) * (2 * uniform() - 1) : normal();
    return { ...value, value: value.value + value.u * error, u: 0 };
  }
  const copy = Object.fromEntries(Object.entries(value).map(([key, item]) => [key, draw(item)]));
  return ('calibration' in copy ? calibrated(copy as unknown as StretchTest) : copy) as T;
}

function calibrated(test: StretchTest): StretchTest {
  const factor = 1 + test.calibration * normal();
  const points = test.points?.map(({ ratio, force }) => ({ ratio, force: force * factor })) ?? null;
  return { ...test, points, calibration: 0 };
}

function drawSubject(of: Subject): Subject {
  const { official, flight } = of.flown!;
  const seconds = official.seconds + official.u * normal();
  return {
    ...draw({ ...of, flown: null }),
    flown: { flight: draw(flight), official: { ...official, seconds, u: 0 } },
  };
}

/** Every figure by a key that tells its motor. */
function byKey(of: Subject, assumed: Defaults): Map<string, Figure> {
  const set = evaluate(of, 'all', assumed);
  return new Map([
    ...set.entry,
    ...set.motors.flatMap((figures, index) =>
      [...figures].map(([id, figure]) => [`${id} of motor ${index + 1}`, figure] as const),
    ),
  ]);
}

describe('the law of propagation', () => {
  it('agrees within 10 % with a Monte Carlo run for every figure known better than 10 %', {
    timeout: 60_000,
  }, () => {
    const tight = [measured('turns', 800, 8)];
    const example = subject({
      design: {
        ...fullDesign(),
        motors: [
          motor({ breakTurns: tight, skein: skein({ batch: 'fen-a' }) }),
          motor({ count: 1, breakTurns: tight, skein: skein({ mass: null, batch: 'fen-a', strip: null }) }),
        ],
      },
      batches: new Map([['fen-a', batch({ stretchTests: [stretchTest({ broke: true })] })]]),
      flown: flown(),
    });
    const runs = 12_000;
    const sums = new Map<string, { sum: number; squares: number }>();
    for (let run = 0; run < runs; run++)
      for (const [key, figure] of byKey(drawSubject(example), draw(defaults) as Defaults)) {
        if (!('value' in figure)) continue;
        const at = sums.get(key) ?? { sum: 0, squares: 0 };
        sums.set(key, { sum: at.sum + figure.value, squares: at.squares + figure.value ** 2 });
      }
    const compared: string[] = [];
    for (const [key, figure] of byKey(example, defaults)) {
      if (!('value' in figure) || figure.u === 0 || figure.u > 0.1 * Math.abs(figure.value)) continue;
      const { sum, squares } = sums.get(key)!;
      const deviation = Math.sqrt((squares - sum ** 2 / runs) / (runs - 1));
      expect.soft(Math.abs(figure.u / deviation - 1), `u of ${key}`).toBeLessThan(0.1);
      compared.push(key);
    }
    expect(compared).toEqual(
      expect.arrayContaining([
        'static-margin',
        'wing-loading',
        'stored-energy',
        'energy-per-gram',
        'energy-per-gram-of-rubber of motor 2',
        'duration-per-turn',
      ]),
    );
    expect(compared.length).toBeGreaterThan(28);
  });
});
