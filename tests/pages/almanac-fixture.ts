import type { Almanac, ChallengeRecord, EntryRecord } from '../../src/almanac/almanac.ts';
import type { JudgedFlight, Standing } from '../../src/contest/standing.ts';
import type { Figure, FigureSet, FigureUnit } from '../../src/figures/figure.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Design } from '../../src/model/design.ts';
import type { Entry, Flight } from '../../src/model/entry.ts';
import type { Kind, Quantity } from '../../src/quantities/quantity.ts';
import { noHistory } from '../contest/history/no-history.ts';
import { noTimeParts } from '../no-time-parts.ts';

// An almanac written by hand: every name and number in it is invented. Numbers are chosen so that a page's text can
// be told without working anything out.

export function quantity(kind: Kind, value: number, u: number, written = ''): Quantity {
  return { kind, value, u, origin: 'measured', written };
}

export function figure(id: string, unit: FigureUnit, value: number, u: number): Figure {
  return {
    id,
    unit,
    value,
    u,
    basis: 'partly assumed',
    assumptions: ['rubber has a density of 0.93 ± 0.02 g/cm³'],
    worked: [],
    shares: [{ input: 'the wing’s span', share: 1 }],
  };
}

export function figureSet(figures: readonly Figure[]): FigureSet {
  return { entry: new Map(figures.map((one) => [one.id, one])), motors: [new Map()] };
}

export const design: Design = {
  control: 'free',
  onboard: ['release', 'dethermaliser'],
  origin: 'own',
  layout: 'tail-aft',
  wing: {
    span: quantity('length', 2, 0.005, '2.00 m ± 5 mm'),
    panels: null,
    area: quantity('area', 0.4, 0.01, '40 dm2'),
    chord: null,
    incidence: quantity('angle', 0.0524, 0.0174, '3°'),
    section: null,
  },
  tailplane: null,
  fin: null,
  balance: quantity('length', 0.08, 0.002, '80 mm'),
  nose: null,
  mass: { airframe: quantity('mass', 0.3, 0.0015, '300 g'), flying: null, parts: {} },
  structure: { wing: 'balsa and tissue' },
  trim: null,
  motors: [
    {
      count: 2,
      rotation: 'clockwise',
      at: null,
      side: null,
      faces: 'tractor',
      hooks: null,
      skein: {
        strip: { width: quantity('length', 0.003, 0.0001), thickness: quantity('length', 0.001, 0.00004) },
        strands: 6,
        length: quantity('length', 0.4, 0.004),
        mass: quantity('mass', 0.012, 0.0001),
        batch: 'first-cut',
        braided: true,
        lubricant: 'silicone',
        brokenIn: null,
      },
      breakTurns: [],
      propeller: { diameter: quantity('length', 0.3, 0.003), pitch: null, blades: 2, after: 'folds' },
      thrustLog: null,
      torqueLog: null,
    },
  ],
  inspected: null,
};

export function flight(number: number, seconds: number): Flight {
  return {
    number,
    date: { date: '2031-05-04', time: null, offset: null, written: '2031-05-04' },
    watches: [quantity('time', seconds, 0.1, `${seconds} s`)],
    timedBy: 'watch',
    turns: [quantity('turns', 500, 2.9, '50 x 10')],
    woundTo: [],
    turnsLeft: [],
    launchTorque: [],
    launch: 'hand',
    launchHeight: null,
    drop: null,
    motorsRun: null,
    release: null,
    motorRun: null,
    height: null,
    behaviour: ['clean'],
    ended: 'ground',
    changed: number === 1 ? null : 'Two grams less in the nose & a <thin> shim.',
    damage: null,
    balance: null,
    mass: null,
    setup: undefined,
    round: null,
    weather: {
      wind: quantity('speed', 1.5, 0.03),
      temperature: null,
      pressure: null,
      humidity: null,
      elevation: null,
      surface: null,
    },
    rubber: null,
    timekeepers: ['otter'],
    flyer: null,
    evidence: ['https://video.example/abc'],
    note: null,
    withdrawn: false,
  };
}

function judged(number: number, seconds: number, target: number): JudgedFlight {
  return {
    number,
    date: '2031-05-04',
    official: { seconds, u: 0.1, ruled: false, explanation: `${seconds} s by one watch` },
    status: 'accepted',
    reason: null,
    setup: null,
    score: seconds,
    scoreU: 0.1,
    counted: true,
    stale: [],
    reachedTarget: seconds >= target,
  };
}

/** An entry with one accepted flight. */
export function entryRecord(id: string, seconds: number, changes: Partial<Entry> = {}): EntryRecord {
  const setup = { id: null, from: null, change: null, design, overrides: [] };
  const entry: Entry = {
    challenge: 'spring',
    id,
    name: `Model ${id}`,
    builders: [{ handle: 'mthorn', name: 'M. Thorn', club: null, junior: false }],
    entered: '2031-04-01',
    photos: [],
    setups: [setup],
    glides: [],
    flights: [flight(1, seconds)],
    withdrawn: null,
    also: [],
    formerly: [],
    body: '',
    ...changes,
  };
  const figures = figureSet([
    figure('span', 'm', 2, 0.005),
    figure('mean-chord', 'm', 0.2, 0.002),
    figure('wing-loading', 'N/m2', 7.9, 0.2),
    { id: 'tail-volume', unit: '1', absent: 'needs the tailplane’s arm' },
  ]);
  return {
    entry,
    challenge: 'spring',
    ruling: null,
    judged: {
      entry: id,
      flights: [judged(1, seconds, 30)],
      bestCounted: 1,
      bestProvisional: null,
      headlineSetup: null,
      divisions: [],
      unplaced: null,
    },
    headline: setup,
    figures,
    setupFigures: [figures],
    noseBallasts: [],
    timeParts: noTimeParts,
    energyAccount: new Map(),
    stretchesAtLaunch: [],
    logs: { thrust: new Map(), torque: new Map() },
    flights: entry.flights.map((one) => ({
      flight: one,
      judged: judged(one.number, seconds, 30),
      figures: figureSet([]),
    })),
    photos: [],
    html: '',
    junior: entry.builders.every((builder) => builder.junior),
    fileToChange: null,
  };
}

export const challenge: Challenge = {
  id: 'spring',
  title: 'Spring Trial 2031',
  opens: '2031-04-01',
  closes: '2031-09-30',
  reportBy: '2031-10-14',
  final: null,
  timeZone: null,
  target: { time: 30, label: 'Half a minute' },
  milestones: [],
  eligibility: [
    {
      kind: 'figure',
      figure: 'span',
      limit: { low: { value: 1, included: true }, high: null, written: 'at least 1 m' },
    },
    { kind: 'fact', fact: 'control', allowed: ['free'] },
  ],
  flying: {
    launch: ['hand'],
    launchHeight: null,
    drop: null,
    release: 'together',
    attemptBelow: 4,
    maximum: null,
    flightsPerDay: 1,
    flights: null,
    timekeepers: { atLeast: 2, orVideo: true },
    evidence: { links: 1, shows: ['launch', 'landing'] },
  },
  timing: {
    starts: 'release',
    stops: { touchdown: true, outOfSight: 10 },
    combine: 'mean',
    resolution: '0.1',
    round: 'down',
    uncertainty: { watch: 0.1, video: 0.05 },
  },
  scoring: { method: 'best', flights: 1, scale: null, provisional: 'apart' },
  tieBreaks: [{ kind: 'figure', figure: 'span', prefers: 'larger' }, { kind: 'earlier-flight' }],
  divisions: [],
  rounds: [],
  protests: 14 * 86_400,
  amendments: [{ date: '2031-04-20', what: 'Video timing allowed', why: 'Lone builders could not enter' }],
  formerly: [],
  body: '',
};

/** A challenge whose entries have the times given, longest first. */
export function challengeRecord(
  times: readonly number[],
  entries: readonly EntryRecord[] = times.map((seconds, index) => entryRecord(`m${index + 1}`, seconds)),
): ChallengeRecord {
  const standings: Standing[] = entries.map((record, index) => ({
    place: index + 1,
    entry: record.entry.id,
    divisions: [],
    score: times[index] ?? 0,
    u: 0.1,
    provisional: false,
    flights: [1],
    tieBreak: null,
    withinTimingErrorOf: [],
  }));
  return {
    challenge,
    state: 'open',
    result: {
      state: 'open',
      entries: new Map(entries.map((record) => [record.entry.id, record.judged])),
      standings,
      claims: [],
      unplaced: [],
      divisions: new Map(),
    },
    frozen: null,
    places: { overall: new Map(), divisions: new Map() },
    history: noHistory,
    awaiting: [],
    energyUses: [],
    entries,
    html: '<p>Written by the organiser.</p>',
  };
}

/** A whole site around the challenges given. */
export function almanacOf(challenges: readonly ChallengeRecord[], changes: Partial<Almanac> = {}): Almanac {
  return {
    site: {
      format: 1,
      title: 'Hollow Marsh Trials',
      club: 'Hollow Marsh Aeromodellers',
      address: 'https://marsh.example/trials/',
      repository: null,
      sendTo: null,
      units: 'metric',
      featured: null,
      logo: null,
      accent: '#234a7a',
      links: [],
      licence: 'CC BY 4.0',
      body: '',
    },
    siteHtml: '',
    logo: null,
    now: '2031-06-01T12:00:00Z',
    challenges,
    featured: challenges[0]?.challenge.id ?? null,
    builders: [
      {
        builder: {
          handle: 'mthorn',
          name: 'M. Thorn',
          club: null,
          junior: false,
          link: null,
          formerly: [],
          body: '',
        },
        entries: challenges.flatMap((record) =>
          record.entries.map(({ entry }) => ({ challenge: record.challenge.id, entry: entry.id })),
        ),
        html: '',
      },
    ],
    pages: [
      {
        page: { id: 'privacy', title: 'Privacy', order: 1, formerly: [], body: '' },
        html: '<p>Nothing is kept.</p>',
      },
    ],
    news: [],
    batches: [
      {
        batch: {
          id: 'first-cut',
          label: 'First cut',
          strip: null,
          density: null,
          made: null,
          stretchTests: [],
          torqueTests: [],
          formerly: [],
          body: '',
        },
        figures: figureSet([{ id: 'return-ratio', unit: '1', absent: 'needs a stretch test' }]),
        html: '',
      },
    ],
    leftOut: [],
    redirects: new Map(),
    problems: [],
    files: [],
    ...changes,
  };
}
