import { meanAerodynamicChord, type PlanformPanel, projectedArea } from '../src/airframe/planform.ts';
import { neutralPointFromBalance, tailEffect } from '../src/airframe/stability.ts';
import { rootSum } from '../src/figures/root-sum.ts';
import { humidAirDensity } from '../src/flight/humid-air.ts';
import { type Glider, laminarPlateDrag, minimumSink, type SteadyGlide } from '../src/flight/polar.ts';
import { dryAirDensity, standardAtmosphere } from '../src/flight/standard-atmosphere.ts';
import { airViscosity } from '../src/flight/viscosity.ts';
import type { Kind } from '../src/quantities/quantity.ts';
import { findUnit } from '../src/quantities/units.ts';
import { breakTurns, strandsSection } from '../src/rubber/skein.ts';
import { stretchAtShare } from '../src/rubber/stretch-energy.ts';
import { thrustImpulse, thrustRun } from '../src/rubber/thrust-log.ts';
import { treloarEnergy } from '../src/rubber/treloar.ts';

/** A number from outside the project, and what the project makes of the same case. */
export interface PublishedCheck {
  /** The case, with the unit of its numbers. */
  readonly what: string;
  readonly source: string;
  /** How surely the number is the source's: seen in print, remembered, or handed on among modellers without a source. */
  readonly from: 'published' | 'from memory' | 'common practice';
  readonly expected: number;
  /** Absolute, in the unit of `expected`: half of its last printed digit unless `what` or `source` says more. */
  readonly tolerance: number;
  readonly ours: () => number;
}

const inch = 0.0254;

// Yard and pound agreement of 1959 and the standard acceleration of the 3rd CGPM, 1901: the factors are exact.
const agreements = 'yard and pound agreement 1959, 3rd CGPM 1901';
const atmosphere = 'US Standard Atmosphere 1976, table I';
const treloar = 'trapezoid under the points of L. R. G. Treloar, Trans. Faraday Soc. 40 (1944) 59';
const backingOff = 'one practitioner’s rule of backing off';
const anderson = 'Anderson, Introduction to Flight, examples 7.4 to 7.7';
const wing = 'published worked example: root 400, tip 200 at y = 1000, its leading edge at 600';
const polar = 'textbook formulas of the parabolic polar, m 0.23 kg, S 0.18 m², AR 15, e 0.85, C_D0 0.025';

export const publishedChecks: readonly PublishedCheck[] = [
  {
    what: '1 ft·lbf/lb, J/kg',
    source: agreements,
    from: 'published',
    expected: 2.98906692,
    tolerance: 1e-12,
    ours: () => factor('specific-energy', 'ft·lbf/lb'),
  },
  {
    what: '1 ozf·in, N·m',
    source: agreements,
    from: 'published',
    expected: 7.061551814226e-3,
    tolerance: 1e-15,
    ours: () => factor('torque', 'ozf·in'),
  },
  {
    what: '1 oz/ft², g/dm²',
    source: agreements,
    from: 'published',
    expected: 3.05151727274,
    tolerance: 5e-12,
    ours: () => factor('loading', 'oz/ft2') / factor('loading', 'g/dm2'),
  },
  {
    what: '1 gf·cm, N·m',
    source: '3rd CGPM 1901',
    from: 'published',
    expected: 9.80665e-5,
    tolerance: 1e-17,
    ours: () => factor('torque', 'gf·cm'),
  },
  {
    what: '1 lbf, N',
    source: 'NIST SP 811, appendix B.8',
    from: 'published',
    expected: 4.4482216152605,
    tolerance: 5e-13,
    ours: () => factor('force', 'lbf'),
  },
  {
    what: '1 inHg, Pa',
    source: 'NIST SP 811, appendix B.8',
    from: 'published',
    expected: 3386.389,
    tolerance: 5e-4,
    ours: () => factor('pressure', 'inHg'),
  },
  {
    what: '1 kn, m/s',
    source: 'NIST SP 811, appendix B.8',
    from: 'published',
    expected: 0.5144444,
    tolerance: 5e-8,
    ours: () => factor('speed', 'kn'),
  },
  ...(
    [
      [0, 1.225],
      [1000, 1.1117],
      [2000, 1.0066],
      [3000, 0.9093],
    ] as const
  ).map(
    ([altitude, expected]): PublishedCheck => ({
      what: `density at ${altitude} m, kg/m³`,
      source: atmosphere,
      from: 'published',
      expected,
      tolerance: 5e-5,
      ours: () => dryAirDensity(standardAtmosphere(altitude)!),
    }),
  ),
  ...(
    [
      [0, 1.7893e-5],
      [5000 * 0.3048, 1.7414e-5],
    ] as const
  ).map(
    ([altitude, expected]): PublishedCheck => ({
      what: `viscosity at ${altitude} m, Pa·s, ± 2e-4 of it`,
      source: 'US Standard Atmosphere 1976',
      from: 'published',
      expected,
      tolerance: 2e-4 * expected,
      ours: () => airViscosity(standardAtmosphere(altitude)!.temperature),
    }),
  ),
  {
    what: 'density at 20 °C, 101325 Pa and 50 %, kg/m³, ± 0.1 %',
    source: 'CIPM-2007, Metrologia 45 (2008) 149',
    from: 'from memory',
    expected: 1.1993,
    tolerance: 0.0012,
    ours: () => humidAirDensity(293.15, 101_325, 0.5),
  },
  {
    what: 'density of dry air at 0 °C and 101325 Pa, kg/m³, ± 0.05 %',
    source: 'Kaye and Laby, Tables of Physical and Chemical Constants (0.03 % of carbon dioxide)',
    from: 'from memory',
    expected: 1.2929,
    tolerance: 0.0006,
    ours: () => humidAirDensity(273.15, 101_325, 0),
  },
  ...(
    [
      [7.6, 11.862264],
      [7.05, 9.070555],
      [6.15, 6.020442],
      [5.36, 4.188315],
      [3.02, 1.049795],
    ] as const
  ).map(
    ([stretch, expected]): PublishedCheck => ({
      what: `work to a stretch of ${stretch}, MJ/m³`,
      source: treloar,
      from: 'published',
      expected,
      tolerance: 5.1e-7,
      ours: () => treloarEnergy(stretch) / 1e6,
    }),
  ),
  {
    what: 'energy to a stretch of 7.6 at 0.93 g/cm³, J/g',
    source: treloar,
    from: 'published',
    expected: 12.755,
    tolerance: 5e-4,
    ours: () => treloarEnergy(7.6) / 930 / 1000,
  },
  {
    what: 'break turns an inch, two strands 0.083 × 0.042 in, C = 10.64',
    source: 'reported case',
    from: 'common practice',
    expected: 127.4,
    tolerance: 0.05,
    ours: () => breakTurns(10.64, inch, strandsSection(2, 0.083 * inch, 0.042 * inch)),
  },
  {
    what: 'break turns of a loop of 17 in of it',
    source: 'reported case',
    from: 'common practice',
    expected: 2166,
    tolerance: 0.5,
    ours: () => breakTurns(10.64, 17 * inch, strandsSection(2, 0.083 * inch, 0.042 * inch)),
  },
  ...(
    [
      [10, 30],
      [15, 40],
      [20, 45],
    ] as const
  ).map(
    ([fewer, expected]): PublishedCheck => ({
      what: `energy lost with ${fewer} % fewer turns, %, to the nearest six`,
      source: backingOff,
      from: 'common practice',
      expected,
      tolerance: 6,
      ours: () => energyLost(fewer),
    }),
  ),
  ...(
    [
      [10, 30],
      [15, 41],
      [20, 50],
    ] as const
  ).map(
    ([fewer, expected]): PublishedCheck => ({
      what: `the same by Treloar’s points, worked out apart, ${fewer} % fewer, %`,
      source: treloar,
      from: 'published',
      expected,
      tolerance: 0.5,
      ours: () => energyLost(fewer),
    }),
  ),
  {
    what: 'half area of a tapered half wing',
    source: wing,
    from: 'published',
    expected: 300_000,
    tolerance: 1e-6,
    ours: () => projectedArea(taperedWing) / 2,
  },
  {
    what: 'mean aerodynamic chord of it',
    source: wing,
    from: 'published',
    expected: 311.1111,
    tolerance: 5e-5,
    ours: () => meanAerodynamicChord(taperedWing).chord,
  },
  {
    what: 'station of that chord',
    source: wing,
    from: 'published',
    expected: 444.4444,
    tolerance: 5e-5,
    ours: () => meanAerodynamicChord(taperedWing).station,
  },
  {
    what: 'neutral point, V 0.34, a 0.08/°, a_t 0.1/°, dε/dα 0.35, h_ac 0.24',
    source: anderson,
    from: 'from memory',
    expected: 0.516,
    tolerance: 5e-4,
    ours: textbookNeutralPoint,
  },
  {
    what: 'static margin of it with the balance at 0.35',
    source: anderson,
    from: 'from memory',
    expected: 0.166,
    tolerance: 5e-4,
    ours: () => textbookNeutralPoint() - 0.35,
  },
  {
    what: 'lift coefficient at minimum sink',
    source: polar,
    from: 'from memory',
    expected: 1.73325,
    tolerance: 5e-6,
    ours: () => slowestSink().lift,
  },
  {
    what: 'speed at minimum sink, m/s',
    source: polar,
    from: 'from memory',
    expected: 3.43562,
    tolerance: 5e-6,
    ours: () => slowestSink().speed,
  },
  {
    what: 'minimum sink, m/s',
    source: polar,
    from: 'from memory',
    expected: 0.198218,
    tolerance: 5e-7,
    ours: () => slowestSink().sink,
  },
  {
    what: 'friction of a laminar plate at Re 10⁴',
    source: 'Blasius 1908, 1.328/√Re',
    from: 'published',
    expected: 0.01328,
    tolerance: 5e-7,
    ours: () => laminarPlateDrag(1e4),
  },
  {
    what: 'friction of a laminar plate at Re 10⁵',
    source: 'Blasius 1908, 1.328/√Re',
    from: 'published',
    expected: 0.0041995,
    tolerance: 5e-8,
    ours: () => laminarPlateDrag(1e5),
  },
  {
    what: 'impulse of 65 g for 14 s, N·s',
    source: 'published bench case, worked by hand',
    from: 'published',
    expected: 8.924,
    tolerance: 5e-4,
    ours: benchImpulse,
  },
  {
    what: 'impulse of six of them, N·s',
    source: 'published bench case, worked by hand',
    from: 'published',
    expected: 53.54,
    tolerance: 5e-3,
    ours: () => 6 * benchImpulse(),
  },
  {
    what: 'combined uncertainty of 25, 9.7, 2.9 and 16.6 nm, nm',
    source: 'JCGM 100:2008, annex H.1, first order',
    from: 'from memory',
    expected: 32,
    tolerance: 0.5,
    ours: () => rootSum([25, 9.7, 2.9, 16.6].map((change) => ({ input: `${change} nm`, change }))).u,
  },
];

function factor(kind: Kind, symbol: string): number {
  const found = findUnit(kind, symbol);
  if (found === null) throw new Error(`no ${symbol} among the units of ${kind}`);
  return found.factor;
}

/** Energy in % that a skein of rubber like Treloar's lacks when it is wound to so many % fewer turns than break it. */
function energyLost(fewer: number): number {
  const held = treloarEnergy(stretchAtShare(1 - fewer / 100, 7.6)) / treloarEnergy(7.6);
  return 100 * (1 - held);
}

const taperedWing: readonly PlanformPanel[] = [
  { length: 1000, root: 400, tip: 200, sweep: 600, dihedral: 0 },
];

function textbookNeutralPoint(): number {
  return neutralPointFromBalance(0.24, 0.34, tailEffect(0.1, 0.08, 0.35));
}

function slowestSink(): SteadyGlide {
  const glider: Glider = {
    mass: 0.23,
    wingArea: 0.18,
    chord: 0.11,
    aspectRatio: 15,
    density: 1.225,
    viscosity: 1.7894e-5,
    plateFactor: 0,
    fixedDrag: 0.025,
    spanEfficiency: 0.85,
    usableLift: Number.POSITIVE_INFINITY,
  };
  return minimumSink(glider);
}

function benchImpulse(): number {
  const thrust = 0.065 * 9.80665;
  const points = [
    [0, 0],
    [1, 0],
    [1, thrust],
    [15, thrust],
    [15, 0],
    [40, 0],
  ] as const;
  return thrustImpulse(thrustRun(points.map(([time, pull]) => ({ time, thrust: pull })))!);
}
