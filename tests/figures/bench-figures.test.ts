import { describe, expect, it } from 'vitest';
import { evaluate } from '../../src/figures/evaluate.ts';
import type { Figure, PresentFigure } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import type { Batch, TorqueTest } from '../../src/model/batch.ts';
import type { BenchLogs, ThrustLog, TorqueLog } from '../../src/model/bench-log.ts';
import type { Motor } from '../../src/model/design.ts';
import type { Flight, Glide } from '../../src/model/entry.ts';
import { batch, design, flown, measured, motor, skein, stretchTest, subject } from './example-design.ts';

const gravity = 9.80665;
const turns = (value: number) => measured('turns', value, 0);

/** 65 g for 14 s. */
const pull = 0.065 * gravity;
const steady: ThrustLog = {
  points: [
    [0, 0],
    [1, 0],
    [1, pull],
    [15, pull],
    [15, 0],
    [50, 0],
  ].map(([time, thrust]) => ({ time: time!, thrust: thrust! })),
  calibration: 0.03,
};

/** A torque that falls evenly from 0.1 N·m at 1000 turns to nothing: by hand 2π · ½ · 1000 · 0.1 = 314.159 J. */
const even: TorqueLog = {
  points: [
    { turns: 1000, torque: 0.1 },
    { turns: 0, torque: 0 },
  ],
  calibration: 0.03,
};
const evenEnergy = 314.159265;

function logs(of: { thrust?: ThrustLog; torque?: TorqueLog }): BenchLogs {
  return {
    thrust: new Map(of.thrust === undefined ? [] : [['thrust.csv', of.thrust]]),
    torque: new Map(of.torque === undefined ? [] : [['torque.csv', of.torque]]),
  };
}

const thrustLog = { file: 'thrust.csv', turns: null };
const torqueLog = { file: 'torque.csv', turns: null };

interface Told {
  readonly motor?: Partial<Motor>;
  readonly motors?: readonly Partial<Motor>[];
  readonly logs?: BenchLogs;
  readonly rubber?: Batch;
  readonly flight?: Partial<Flight>;
  readonly glides?: Subject['glides'];
}

function figures(told: Told) {
  const motors = (told.motors ?? [told.motor ?? {}]).map((each) =>
    motor({ breakTurns: [turns(1000)], ...each }),
  );
  const set = evaluate(
    subject({
      design: design({ motors }),
      logs: told.logs ?? logs({}),
      batches: new Map(told.rubber === undefined ? [] : [['fen-a', told.rubber]]),
      glides: told.glides ?? [],
      flown: told.flight === undefined ? null : flown({ turns: [turns(1000)], ...told.flight }),
    }),
    'all',
  );
  return (id: string, of = 0): Figure | undefined => set.motors[of]?.get(id) ?? set.entry.get(id);
}

function present(figure: Figure | undefined): PresentFigure {
  if (figure === undefined || !('value' in figure))
    throw new Error(`absent: ${figure === undefined ? 'no such figure' : figure.absent}`);
  return figure;
}

const absence = (figure: Figure | undefined) =>
  figure !== undefined && 'absent' in figure ? figure.absent : null;

describe('a thrust log', () => {
  const of = figures({ motor: { thrustLog }, logs: logs({ thrust: steady }) });

  it('gives impulse, mean, peak and run time of one motor', () => {
    // Published bench case, by hand: 65 g for 14 s are 8.924 N·s.
    expect(present(of('thrust-impulse')).value).toBeCloseTo(8.924, 3);
    expect(present(of('mean-thrust')).value).toBeCloseTo(pull, 9);
    expect(present(of('peak-thrust')).value).toBeCloseTo(pull, 9);
    expect(present(of('run-time')).value).toBeCloseTo(14, 9);
    for (const id of ['thrust-impulse', 'mean-thrust', 'peak-thrust', 'run-time'])
      expect(present(of(id)).basis).toBe('logged');
  });

  it('has 3 % of calibration, and half a step of time over √3', () => {
    const impulse = present(of('thrust-impulse'));
    expect(impulse.u / impulse.value).toBeCloseTo(0.03, 9);
    // 50 s in five steps.
    expect(present(of('run-time')).u).toBeCloseTo(5 / Math.sqrt(3), 9);
    const mean = present(of('mean-thrust'));
    expect(mean.shares.map(({ input }) => input).toSorted()).toEqual([
      'the calibration of thrust.csv',
      'the time between readings in thrust.csv',
    ]);
  });

  it('takes the calibration of its header', () => {
    const stated = figures({
      motor: { thrustLog },
      logs: logs({ thrust: { ...steady, calibration: 0.02 } }),
    });
    expect(present(stated('peak-thrust')).u / pull).toBeCloseTo(0.02, 9);
  });

  it('says what is odd about it', () => {
    const running = { ...steady, points: steady.points.slice(2, 4) };
    const odd = figures({ motor: { thrustLog }, logs: logs({ thrust: running }) });
    expect(present(odd('run-time')).assumptions).toEqual([
      'no drift was taken off thrust.csv: it ends as it runs',
      'the log thrust.csv begins with the motor running',
      'the log thrust.csv ends with the motor running',
    ]);
    const shifted = {
      ...steady,
      points: steady.points.map(({ time, thrust }) => ({ time, thrust: thrust + 0.1 * pull })),
    };
    expect(
      present(figures({ motor: { thrustLog }, logs: logs({ thrust: shifted }) })('thrust-impulse'))
        .assumptions,
    ).toEqual(['at its end the log thrust.csv reads 10 % of its peak, which was taken for drift']);
  });

  it('is needed, and readable, and of some thrust', () => {
    expect(absence(figures({})('run-time'))).toBe('needs a thrust log');
    expect(absence(figures({ motors: [{}, {}] })('run-time', 1))).toBe('needs a thrust log of motor 2');
    expect(absence(figures({ motor: { thrustLog } })('run-time'))).toBe(
      'needs the thrust log thrust.csv in a form that can be read',
    );
    const nothing = { ...steady, points: steady.points.map(({ time }) => ({ time, thrust: 0 })) };
    expect(absence(figures({ motor: { thrustLog }, logs: logs({ thrust: nothing }) })('run-time'))).toBe(
      'the log thrust.csv shows no thrust',
    );
  });
});

describe('the figure of merit on the bench', () => {
  // Momentum theory, by hand: 1 N with a disc of 0.1 m² in 1.225 kg/m³ needs 2.020305 W, for 10 s 20.20305 J.
  const newton: ThrustLog = {
    points: steady.points.map(({ time, thrust }) => ({
      time: time === 15 ? 11 : time,
      thrust: thrust > 0 ? 1 : 0,
    })),
    calibration: 0.03,
  };
  const propeller = {
    diameter: measured('length', Math.sqrt(0.4 / Math.PI), 0),
    pitch: null,
    blades: 2,
    after: null,
  };
  const of = (log: number | null, more: Partial<Motor> = {}) =>
    figures({
      motor: {
        thrustLog: { file: 'thrust.csv', turns: log === null ? null : turns(log) },
        propeller,
        ...more,
      },
      logs: logs({ thrust: newton, torque: even }),
      flight: { turns: [turns(300)] },
    })('static-figure-of-merit');

  it('is what the air must have got of what the skein held at the turns of the log', () => {
    // Wound to break, whatever the flight was wound to: 15.5 g at 12 J/g are 186 J.
    const merit = present(of(1000));
    expect(merit.value).toBeCloseTo(20.20305 / 186, 6);
    expect(merit.basis).toBe('partly assumed');
    // 2 of 12 J/g; 3 % of calibration count one and a half times; half of 2.94 % of density; 1 of 155 of mass.
    expect(merit.u / merit.value).toBeCloseTo(Math.hypot(2 / 12, 0.045, 0.0147, 1 / 155), 2);
  });

  it('takes the energy of the motor’s torque log where there is one', () => {
    expect(present(of(1000, { torqueLog })).value).toBeCloseTo(20.20305 / evenEnergy, 6);
    expect(present(of(500, { torqueLog })).value).toBeCloseTo((4 * 20.20305) / evenEnergy, 6);
  });

  it('needs the turns of the log and the disc', () => {
    expect(absence(of(null))).toBe('needs the turns of the log thrust.csv');
    expect(absence(of(1000, { propeller: null }))).toBe('needs the diameter of the propeller');
  });
});

describe('the thrust margin', () => {
  const glide: Glide = {
    date: null,
    height: measured('length', 3, 0),
    distance: measured('length', 30, 0),
    time: null,
    wind: null,
    direction: null,
    balance: null,
    behaviour: ['clean'],
    note: null,
  };
  const glides = [{ glide, design: design() }];
  const all = { motor: { thrustLog }, logs: logs({ thrust: steady }), glides, flight: {} };

  it('is the pull of all motors, times the glide ratio, over the weight', () => {
    // By hand: 2 · 65 g · 10 / 643 g.
    expect(present(figures(all)('thrust-margin')).value).toBeCloseTo(1300 / 643, 6);
  });

  it('needs a log of every motor', () => {
    expect(absence(figures({ ...all, motors: [{ thrustLog }, {}] })('thrust-margin'))).toBe(
      'needs a thrust log of motor 2',
    );
  });
});

describe('the energy of a motor with a torque log', () => {
  const wound = (count: number | null, log = even) =>
    figures({
      motor: { torqueLog },
      logs: logs({ torque: log }),
      flight: { turns: count === null ? [] : [turns(count)] },
    });
  const energy = 'energy-per-gram-of-rubber';

  it('is the work of its torque from the turns of the flight', () => {
    expect(present(wound(1000)(energy)).value).toBeCloseTo(evenEnergy / 0.0155, 4);
    // From half the turns, a quarter.
    expect(present(wound(500)(energy)).value).toBeCloseTo(evenEnergy / 4 / 0.0155, 4);
    expect(present(wound(500)(energy))).toMatchObject({ basis: 'logged', assumptions: [] });
  });

  it('is stored with no more uncertainty than the rig’s: the mass cancels', () => {
    const stored = present(wound(1000)('stored-energy'));
    expect(stored.value).toBeCloseTo(2 * evenEnergy, 5);
    expect(stored.u / stored.value).toBeCloseTo(0.03, 6);
  });

  it('is that of its top where the flight states no turns, or more', () => {
    expect(present(wound(null)(energy)).value).toBeCloseTo(evenEnergy / 0.0155, 4);
    expect(present(wound(null)(energy)).assumptions).toEqual([
      'the flight states no turns: the log torque.csv is taken from its top',
    ]);
    expect(present(wound(1100)(energy)).value).toBeCloseTo(evenEnergy / 0.0155, 4);
    expect(present(wound(1100)(energy)).assumptions).toEqual([
      'the log torque.csv goes to 1000 turns only, and is taken from there',
    ]);
  });

  it('says where a log was not let go slack', () => {
    const short = { ...even, points: [even.points[0]!, { turns: 100, torque: 0.01 }] };
    expect(present(wound(1000, short)(energy)).assumptions).toEqual([
      'the log torque.csv ends with 100 turns still in',
    ]);
    // By hand: 314.159 J less the hundredth that the last 100 turns hold.
    expect(present(wound(1000, short)(energy)).value).toBeCloseTo((0.99 * evenEnergy) / 0.0155, 4);
    expect(present(wound(1000, short)('mean-torque')).value).toBeCloseTo(0.055, 9);
  });

  it('is not stored where not all motors ran', () => {
    const of = figures({
      motor: { torqueLog, rotation: 'clockwise' },
      logs: logs({ torque: even }),
      flight: { motorsRun: 1 },
    });
    expect(absence(of('stored-energy'))).toBe('needs a flight on which all motors ran');
    expect(absence(of('net-torque-offset'))).toBe('needs a flight on which all motors ran');
    expect(present(of('mean-torque')).value).toBeCloseTo(0.05, 9);
  });
});

function torqueTest(overrides: Partial<TorqueTest> = {}): TorqueTest {
  return {
    file: 'skein.csv',
    strands: 10,
    length: measured('length', 0.48, 0),
    mass: measured('mass', 0.0155, 0),
    cycle: null,
    points: even.points,
    calibration: 0.03,
    ...overrides,
  };
}

/** Turns at which the tested skein should break, by hand: C·L/√A with A = m/(ρ·L), 940 kg/m³. */
const testBreaks = (10.6 * 0.48) / Math.sqrt(0.0155 / (940 * 0.48));

describe('the energy of a motor whose batch has a torque test', () => {
  const rubber = (overrides: Partial<Batch> = {}) =>
    batch({ torqueTests: [torqueTest()], density: measured('density', 940, 0), ...overrides });
  const like = skein({
    batch: 'fen-a',
    length: measured('length', 0.48, 0),
    mass: measured('mass', 0.0155, 0),
  });
  const of = (told: { breaks?: number; wound: number; rubber?: Batch }) =>
    present(
      figures({
        motor: { breakTurns: told.breaks === undefined ? [] : [turns(told.breaks)], skein: like },
        rubber: told.rubber ?? rubber(),
        flight: { turns: [turns(told.wound)] },
      })('energy-per-gram-of-rubber'),
    );

  it('is that of the test for the same skein wound as far, whatever C is', () => {
    const energy = of({ wound: 1000 });
    expect(energy.value).toBeCloseTo(evenEnergy / 0.0155, 4);
    expect(energy.u / energy.value).toBeCloseTo(0.03, 6);
  });

  it('follows Treloar’s curve from the share of the test to that of the flight', () => {
    // Treloar 1944, published trapezoids: 11.862264 MJ/m³ to 7.6 and 4.188315 to 5.36. A test to the break has λ = 7.6; by
    // hand λ = 5.36 is reached at x = √((5.36² − 1)/(7.6² − 1)).
    const toBreak = torqueTest({
      points: [
        { turns: testBreaks, torque: 0.1 },
        { turns: 0, torque: 0 },
      ],
    });
    const x = Math.sqrt((5.36 ** 2 - 1) / (7.6 ** 2 - 1));
    const noStretch = rubber({ torqueTests: [toBreak], stretchTests: [] });
    const energy = of({ breaks: 500, wound: 500 * x, rubber: noStretch });
    const tested = (Math.PI * 0.1 * testBreaks) / 0.0155;
    expect(energy.value / ((tested * 4.188315) / 11.862264)).toBeCloseTo(1, 6);
    expect(energy.basis).toBe('partly assumed');
  });

  it('follows the batch’s own way back where it was stretched too', () => {
    // Broke at 7, so λ² = 1 + 48x²: x = √½ gives λ = 5, where the way back holds 15.5 of the 41 N (by hand).
    const toBreak = torqueTest({
      points: [
        { turns: testBreaks, torque: 0.1 },
        { turns: 0, torque: 0 },
      ],
    });
    const both = rubber({ torqueTests: [toBreak], stretchTests: [stretchTest({ broke: true })] });
    const energy = of({ breaks: 500, wound: 500 * Math.SQRT1_2, rubber: both });
    expect(energy.value / (((Math.PI * 0.1 * testBreaks) / 0.0155) * (15.5 / 41))).toBeCloseTo(1, 6);
  });

  it('is the mean of several, with their deviation, never below the uncertainty of a single one', () => {
    const stronger = torqueTest({
      file: 'second.csv',
      points: [
        { turns: 1000, torque: 0.12 },
        { turns: 0, torque: 0 },
      ],
    });
    const two = of({ wound: 1000, rubber: rubber({ torqueTests: [torqueTest(), stronger] }) });
    // Mean of 1 and 1.2, and the deviation of two, their difference over √2.
    const one = evenEnergy / 0.0155;
    expect(two.value).toBeCloseTo(1.1 * one, 3);
    expect(two.u).toBeCloseTo((0.2 * one) / Math.SQRT2, 3);
    const again = torqueTest({ file: 'again.csv' });
    const same = of({ wound: 1000, rubber: rubber({ torqueTests: [torqueTest(), again] }) });
    expect(same.u / same.value).toBeCloseTo(0.03, 6);
  });

  it('leaves a test away that could not be read', () => {
    const unread = rubber({ torqueTests: [torqueTest({ points: null })], stretchTests: [] });
    expect(of({ breaks: 1000, wound: 1000, rubber: unread }).value).toBeCloseTo(12_000, 6);
  });

  it('comes after the motor’s own torque log', () => {
    const both = figures({
      motor: { skein: like, torqueLog },
      logs: logs({
        torque: { ...even, points: even.points.map(({ turns, torque }) => ({ turns, torque: 2 * torque })) },
      }),
      rubber: rubber(),
      flight: {},
    });
    expect(present(both('energy-per-gram-of-rubber')).value).toBeCloseTo((2 * evenEnergy) / 0.0155, 4);
  });
});

describe('the launch torque', () => {
  const launch = (told: Told) => figures(told)('launch-torque');
  const torques = (...values: number[]) => values.map((value) => measured('torque', value, 0.001));

  it('is as read, one for all motors or one for each', () => {
    const read = {
      flight: { launchTorque: torques(0.061) },
      motor: { torqueLog },
      logs: logs({ torque: even }),
    };
    expect(present(launch(read))).toMatchObject({ value: 0.061, basis: 'measured' });
    const each = figures({ motors: [{}, {}], flight: { launchTorque: torques(0.061, 0.07) } });
    expect(present(each('launch-torque', 1)).value).toBe(0.07);
  });

  it('is read off the motor’s torque log at the turns wound', () => {
    const at = (wound: number) =>
      present(
        launch({ motor: { torqueLog }, logs: logs({ torque: even }), flight: { turns: [turns(wound)] } }),
      );
    expect(at(700).value).toBeCloseTo(0.07, 9);
    expect(at(700).basis).toBe('logged');
    expect(at(1200).value).toBeCloseTo(0.1, 9);
  });

  it('is that of the batch’s test at the same share of the break turns, times (m/L)^1.5', () => {
    // Four times the mass at the same length: half the break turns, 4^1.5 = 8 times the torque. 400 turns on it are as 800 on
    // the test, where that reads 0.08 N·m.
    const thick = skein({
      batch: 'fen-a',
      mass: measured('mass', 0.062, 0),
      length: measured('length', 0.48, 0),
    });
    const scaled = (wound: number) =>
      present(
        launch({
          motor: { breakTurns: [], skein: thick },
          rubber: batch({ torqueTests: [torqueTest()], density: measured('density', 940, 0) }),
          flight: { turns: [turns(wound)] },
        }),
      );
    expect(scaled(400).value).toBeCloseTo(0.64, 9);
    expect(scaled(400).u / 0.64).toBeCloseTo(0.03, 6);
    // Beyond the top of the test it stays there.
    expect(scaled(600).value).toBeCloseTo(0.8, 9);
    expect(scaled(600).assumptions).toContain(
      'the test skein.csv goes less far than the motor was wound: its torque is taken at its top',
    );
  });

  it('needs something to be read off, and the turns', () => {
    expect(absence(launch({ flight: {} }))).toBe(
      'needs the launch torque, a torque log or a torque test of the batch',
    );
    expect(
      absence(launch({ motor: { torqueLog }, logs: logs({ torque: even }), flight: { turns: [] } })),
    ).toBe('needs the turns of the flight');
  });
});

describe('the mean torque', () => {
  it('is the energy over the turns', () => {
    // By hand: 12 J/g · 15.5 g / (2π · 1000) = 29.603 mN·m.
    expect(present(figures({ flight: {} })('mean-torque')).value).toBeCloseTo(0.029603, 6);
    const logged = figures({ motor: { torqueLog }, logs: logs({ torque: even }), flight: {} });
    expect(present(logged('mean-torque')).value).toBeCloseTo(0.05, 9);
  });

  it('is over the turns of the usual share where the flight states none', () => {
    // 90 % of 1000 turns; the stretch model gives 70 % of 12 J/g there (one of its published points).
    const torque = present(figures({ flight: { turns: [] } })('mean-torque'));
    expect(torque.value / ((0.7 * 186) / (2 * Math.PI * 900))).toBeCloseTo(1, 2);
  });
});

describe('the net torque offset', () => {
  const turning = (...motors: readonly Partial<Motor>[]) =>
    figures({
      motors: motors.map((each) => ({ count: 1, torqueLog, ...each })),
      logs: logs({ torque: even }),
      flight: {},
    })('net-torque-offset');

  it('is the mean torque of all motors over the weight, to the right where they turn clockwise', () => {
    // By hand: 0.05 N·m for each motor; 643 g with two, as one has 15.5 g.
    const arm = (motors: number) => (motors * 0.05) / ((0.612 + motors * 0.0155) * gravity);
    expect(present(turning({ rotation: 'clockwise' })).value).toBeCloseTo(arm(1), 9);
    expect(present(turning({ count: 2, rotation: 'anticlockwise' })).value).toBeCloseTo(-arm(2), 9);
  });

  it('is zero for a handed pair, and certain where both share a log', () => {
    const pair = present(turning({ rotation: 'clockwise' }, { rotation: 'anticlockwise' }));
    expect(pair.value).toBeCloseTo(0, 12);
    expect(pair.u).toBeCloseTo(0, 12);
  });

  it('needs the rotation of every motor', () => {
    expect(absence(turning({ rotation: 'clockwise' }, {}))).toBe(
      'needs the rotation of the propeller of motor 2',
    );
  });
});
