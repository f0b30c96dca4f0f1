import type { Subject } from '../../src/figures/subject.ts';
import type { Batch, StretchTest } from '../../src/model/batch.ts';
import type { Design, Motor, Skein } from '../../src/model/design.ts';
import type { Entry, Flight, Glide, Setup } from '../../src/model/entry.ts';
import type { Kind, Quantity } from '../../src/quantities/quantity.ts';
import { bareFlight } from '../invented-flight.ts';

// An invented aircraft, written out in SI, for the tests of figures. Every call makes new quantities.

export function measured(kind: Kind, value: number, u: number): Quantity {
  return { kind, value, u, origin: 'measured', written: '' };
}

export function skein(overrides: Partial<Skein> = {}): Skein {
  return {
    strip: { width: measured('length', 3.2e-3, 0.13e-3), thickness: measured('length', 1.1e-3, 0.045e-3) },
    strands: 10,
    length: measured('length', 0.48, 0.0048),
    mass: measured('mass', 0.0155, 0.0001),
    batch: null,
    braided: null,
    lubricant: null,
    brokenIn: null,
    ...overrides,
  };
}

export function motor(overrides: Partial<Motor> = {}): Motor {
  return {
    count: 2,
    rotation: null,
    at: null,
    side: null,
    faces: null,
    hooks: null,
    skein: skein(),
    breakTurns: [measured('turns', 800, 40)],
    propeller: null,
    thrustLog: null,
    torqueLog: null,
    ...overrides,
  };
}

/** A plain wing of 3.2 m and 0.876 m², 612 g of airframe, two motors of 15.5 g of rubber. */
export function design(overrides: Partial<Design> = {}): Design {
  return {
    control: 'free',
    onboard: [],
    origin: null,
    layout: 'tail-aft',
    wing: {
      span: measured('length', 3.2, 0.0064),
      panels: null,
      area: measured('area', 0.876, 0.01752),
      chord: null,
      incidence: null,
      section: null,
    },
    tailplane: null,
    fin: null,
    balance: null,
    nose: null,
    mass: { airframe: measured('mass', 0.612, 0.00306), flying: null, parts: {} },
    structure: {},
    trim: null,
    motors: [motor()],
    inspected: null,
    ...overrides,
  };
}

/** The same with everything measured that figures can read, and two kinds of motors. */
export function fullDesign(): Design {
  const degree = Math.PI / 180;
  const panel = (
    length: number,
    root: number,
    tip: number,
    sweep: number,
    dihedral: number,
  ): NonNullable<Design['wing']['panels']>[number] => ({
    length: measured('length', length, 0.002 * length),
    root: measured('length', root, 0.01 * root),
    tip: measured('length', tip, 0.01 * tip),
    sweep: measured('length', sweep, 0.001),
    dihedral: measured('angle', dihedral * degree, degree),
  });
  return design({
    wing: {
      span: measured('length', 3.2, 0.0064),
      panels: [panel(0.9, 0.3, 0.3, 0, 3), panel(0.737, 0.3, 0.18, 0.04, 18)],
      area: null,
      chord: null,
      incidence: measured('angle', 3 * degree, 0.2 * degree),
      section: null,
    },
    tailplane: {
      span: measured('length', 0.9, 0.0018),
      area: measured('area', 0.16, 0.0032),
      arm: measured('length', 1.35, 0.0135),
      incidence: measured('angle', 0, 0.2 * degree),
    },
    fin: { area: measured('area', 0.07, 0.0014), arm: measured('length', 1.4, 0.014), count: 1 },
    balance: measured('length', 0.104, 0.002),
    nose: measured('length', 0.31, 0.0009),
    motors: [
      motor(),
      motor({
        count: 1,
        skein: skein({
          strip: null,
          strands: 8,
          batch: 'fen-a',
          length: measured('length', 0.4, 0.004),
          mass: null,
        }),
        breakTurns: [],
      }),
    ],
  });
}

export function stretchTest(overrides: Partial<StretchTest> = {}): StretchTest {
  return {
    file: 'strip.csv',
    length: measured('length', 0.1, 0.0005),
    mass: measured('mass', 0.33e-3, 0.005e-3),
    temperature: null,
    cycle: null,
    broke: false,
    by: null,
    date: null,
    // Out and back along straight lines between round numbers, so that areas can be counted by hand.
    points: [
      { ratio: 1, force: 0 },
      { ratio: 3, force: 4 },
      { ratio: 7, force: 16 },
      { ratio: 3, force: 3 },
      { ratio: 1, force: 0 },
    ],
    calibration: 0.03,
    ...overrides,
  };
}

export function batch(overrides: Partial<Batch> = {}): Batch {
  return {
    id: 'fen-a',
    label: 'Fen A',
    strip: { width: measured('length', 3.2e-3, 0.13e-3), thickness: measured('length', 1.1e-3, 0.045e-3) },
    density: measured('density', 940, 10),
    made: null,
    stretchTests: [stretchTest()],
    torqueTests: [],
    formerly: [],
    body: '',
    ...overrides,
  };
}

export function flight(overrides: Partial<Flight> = {}): Flight {
  return {
    number: 1,
    date: { date: '2031-05-09', time: null, offset: null, written: '2031-05-09' },
    watches: [measured('time', 42, 0.1)],
    ...bareFlight,
    turns: [measured('turns', 700, 2)],
    launch: 'hand',
    ...overrides,
  };
}

export function glide(overrides: Partial<Glide> = {}): Glide {
  return {
    date: '2031-04-02',
    height: null,
    distance: null,
    time: null,
    wind: null,
    direction: null,
    balance: null,
    behaviour: [],
    note: null,
    ...overrides,
  };
}

export function flown(overrides: Partial<Flight> = {}): NonNullable<Subject['flown']> {
  return { flight: flight(overrides), official: { seconds: 42, u: 0.1, ruled: false, explanation: '' } };
}

const noLogs: Subject['logs'] = { thrust: new Map(), torque: new Map() };

export function subject(overrides: Partial<Subject> = {}): Subject {
  return {
    design: design(),
    batches: new Map(),
    logs: noLogs,
    glides: [],
    mass: null,
    flown: null,
    ...overrides,
  };
}

export function entry(setups: readonly [Setup, ...Setup[]]): Entry {
  return {
    challenge: 'example',
    id: 'example',
    name: 'Example',
    builders: [{ handle: 'example', name: null, club: null, junior: false }],
    entered: null,
    photos: [],
    setups,
    glides: [],
    flights: [],
    withdrawn: null,
    also: [],
    formerly: [],
    body: '',
  };
}
