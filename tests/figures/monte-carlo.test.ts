import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { type Defaults, defaults } from '../../src/figures/defaults.ts';
import { evaluate } from '../../src/figures/evaluate.ts';
import type { Figure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import type { StretchTest, TorqueTest } from '../../src/model/batch.ts';
import type { ThrustLog } from '../../src/model/bench-log.ts';
import type { Entry } from '../../src/model/entry.ts';
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
  return ('calibration' in copy ? calibrated(copy as unknown as Logged) : copy) as T;
}

type Logged = Pick<StretchTest | TorqueTest | ThrustLog, 'points' | 'calibration'>;

/** One factor for the whole log; the time of a thrust log ends somewhere between two of its readings. */
function calibrated(log: Logged): Logged {
  const factor = 1 + log.calibration * normal();
  const times = log.points?.flatMap((point) => ('time' in point ? [point.time] : [])) ?? [];
  const step = (times.at(-1)! - times[0]!) / (times.length - 1);
  const late = (uniform() - 0.5) * step;
  const half = (log.points?.length ?? 0) / 2;
  const points = log.points?.map((point, index) => {
    if ('force' in point) return { ...point, force: point.force * factor };
    if ('torque' in point) return { ...point, torque: point.torque * factor };
    return { time: point.time + (index < half ? 0 : late), thrust: point.thrust * factor };
  });
  return { ...log, points: points as unknown as Logged['points'], calibration: 0 };
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

/** Compares every figure known better than 10 % with a Monte Carlo run; gives the keys of those compared. */
function compare(example: Subject, runs: number, assumed: Defaults = defaults): string[] {
  const sums = new Map<string, { sum: number; squares: number }>();
  for (let run = 0; run < runs; run++)
    for (const [key, figure] of byKey(drawSubject(example), draw(assumed))) {
      if (!('value' in figure)) continue;
      const at = sums.get(key) ?? { sum: 0, squares: 0 };
      sums.set(key, { sum: at.sum + figure.value, squares: at.squares + figure.value ** 2 });
    }
  const compared: string[] = [];
  for (const [key, figure] of byKey(example, assumed)) {
    if (!('value' in figure) || figure.u === 0 || figure.u > 0.1 * Math.abs(figure.value)) continue;
    const { sum, squares } = sums.get(key)!;
    const deviation = Math.sqrt((squares - sum ** 2 / runs) / (runs - 1));
    expect.soft(Math.abs(figure.u / deviation - 1), `u of ${key}`).toBeLessThan(0.1);
    compared.push(key);
  }
  return compared;
}

const motorsOf = ({ setups }: Entry) => setups[0].design.motors.length;

describe('the law of propagation agrees within 10 % with a Monte Carlo run', { timeout: 60_000 }, () => {
  it('for a model of which everything was measured', () => {
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
    const compared = compare(example, 12_000);
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

  it('for glides and predictions, with the assumptions ten times surer than they are', () => {
    const surer = Object.fromEntries(
      Object.entries(defaults).map(([id, each]) => [
        id,
        { ...each, quantity: { ...each.quantity, u: each.quantity.u / 10 } },
      ]),
    ) as Record<keyof Defaults, Defaults[keyof Defaults]>;
    const propeller = {
      diameter: measured('length', 0.32, 0.0032),
      pitch: null,
      blades: null,
      after: 'freewheels',
    } as const;
    const weather = {
      wind: null,
      temperature: null,
      pressure: measured('pressure', 98_500, 300),
      humidity: null,
      elevation: measured('length', 240, 3),
      surface: null,
    };
    const example = subject({
      design: {
        ...fullDesign(),
        motors: [motor({ breakTurns: [measured('turns', 800, 8)], propeller })],
      },
      flown: flown({
        weather,
        launchHeight: measured('length', 1.9, 0.05),
        turnsLeft: [measured('turns', 90, 3)],
      }),
    });
    expect(compare(example, 8000, surer)).toEqual(
      expect.arrayContaining([
        'sink-speed',
        'glide-ratio',
        'glide-speed',
        'reynolds-number',
        'power-to-stay-up',
        'energy-use',
        'predicted-time',
        'ceiling-time',
        'spiral-balance',
      ]),
    );
  });

  it('for motors with bench logs, and a batch with a torque test', () => {
    const tight = [measured('turns', 800, 8)];
    // Pulls evenly for 24 s, is at rest for 16 s, read five times a second; a torque that falls evenly.
    const thrust = Array.from({ length: 201 }, (_, index) => ({
      time: index / 5,
      thrust: index > 0 && index < 120 ? 0.6 : 0,
    }));
    const torque = [
      { turns: 900, torque: 0.09 },
      { turns: 0, torque: 0 },
    ];
    const propeller = { diameter: measured('length', 0.3, 0.003), pitch: null, blades: 2, after: null };
    const thrustLog = { file: 'thrust.csv', turns: measured('turns', 700, 3) };
    const torqueLog = { file: 'torque.csv', turns: null };
    const tested = {
      file: 'skein.csv',
      strands: 10,
      length: measured('length', 0.4, 0.001),
      mass: measured('mass', 0.012, 0.0001),
      cycle: null,
      points: [
        { turns: 735, torque: 0.06 },
        { turns: 0, torque: 0 },
      ],
      calibration: 0.03,
    };
    const example = subject({
      design: {
        ...fullDesign(),
        motors: [
          motor({ breakTurns: tight, rotation: 'clockwise', propeller, thrustLog, torqueLog }),
          motor({
            count: 1,
            breakTurns: [],
            rotation: 'clockwise',
            propeller,
            thrustLog,
            skein: skein({ batch: 'fen-a', length: measured('length', 0.48, 0.001) }),
          }),
        ],
      },
      batches: new Map([['fen-a', batch({ torqueTests: [tested], stretchTests: [] })]]),
      logs: {
        thrust: new Map([['thrust.csv', { points: thrust, calibration: 0.02 }]]),
        torque: new Map([['torque.csv', { points: torque, calibration: 0.03 }]]),
      },
      flown: flown({ turns: [measured('turns', 850, 3)] }),
    });
    const compared = compare(example, 6000);
    for (const id of [
      'thrust-impulse',
      'mean-thrust',
      'peak-thrust',
      'run-time',
      'launch-torque',
      'mean-torque',
    ])
      expect(compared).toContain(`${id} of motor 1`);
    expect(compared).toContain('static-figure-of-merit of motor 1');
    expect(compared).toContain('energy-per-gram-of-rubber of motor 2');
    expect(compared).toContain('net-torque-offset');
  });

  it('for an aircraft of the demo', async () => {
    const content = await readContent(resolve(import.meta.dirname, '../../content'));
    // A list of break turns stands for the next skein, and a balance given as a share for a length: neither can be drawn
    // from what is written.
    const usable = content.entries
      .filter(({ value: { setups, flights } }) => {
        const { design } = setups[0];
        const single = design.motors.every(({ breakTurns }) => breakTurns.length < 2);
        return (
          single && design.wing.panels !== null && design.balance?.kind === 'length' && flights.length > 0
        );
      })
      .sort((a, b) => motorsOf(b.value) - motorsOf(a.value));
    const { value: chosen, logs } = usable[0]!;
    const flight = chosen.flights.find(({ turns }) => turns.length > 0)!;
    const official = { seconds: flight.watches[0]!.value, u: 0.1, ruled: false, explanation: '' };
    const batches = new Map(content.batches.map(({ value }) => [value.id, value]));
    const compared = compare(
      { design: chosen.setups[0].design, batches, logs, glides: [], mass: null, flown: { flight, official } },
      6000,
    );
    expect(compared.length).toBeGreaterThan(20);
  });
});
