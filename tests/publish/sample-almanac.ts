import type { Almanac, ChallengeRecord, EntryRecord } from '../../src/almanac/almanac.ts';
import type { JudgedEntry, JudgedFlight } from '../../src/contest/standing.ts';
import type { Figure } from '../../src/figures/figure.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import type { Design } from '../../src/model/design.ts';
import type { Entry, Flight, Setup } from '../../src/model/entry.ts';
import type { Quantity } from '../../src/quantities/quantity.ts';
import { noHistory } from '../contest/history/no-history.ts';
import { challenge as bareChallenge } from '../contest/invented-challenge.ts';
import { bareFlight } from '../invented-flight.ts';
import { noTimeParts } from '../no-time-parts.ts';

// One entry, invented, with the numbers of the contract's example of a data file; each test changes what it is about.

const seconds = (value: number): Quantity => ({
  kind: 'time',
  value,
  u: 0.1,
  origin: 'measured',
  written: `${value} s`,
});
const span: Quantity = { kind: 'length', value: 3.2, u: 0.005, origin: 'measured', written: '3.20 m' };

const design: Design = {
  control: 'free',
  onboard: [],
  origin: 'own',
  layout: 'tail-aft',
  wing: { span, panels: null, area: null, chord: null, incidence: null, section: null },
  tailplane: null,
  fin: null,
  balance: null,
  nose: null,
  mass: { airframe: null, flying: null, parts: {} },
  structure: {},
  trim: null,
  motors: [],
  inspected: null,
};

const first: Setup = { id: null, from: null, change: null, design, overrides: [] };
const second: Setup = {
  id: 'b',
  from: '2027-06-10',
  change: 'lighter',
  design,
  overrides: ['mass.airframe'],
};

export const flight: Flight = {
  number: 1,
  date: { date: '2027-05-09', time: null, offset: null, written: '2027-05-09' },
  watches: [seconds(41.62), seconds(41.8)],
  ...bareFlight,
  launch: 'hand',
};

export const entry: Entry = {
  challenge: 'long-haul',
  id: 'reedling',
  name: 'Reedling',
  builders: [{ handle: 'amarsh', name: 'A. Marsh', club: null, junior: false }],
  entered: null,
  photos: [],
  setups: [first, second],
  glides: [],
  flights: [flight],
  withdrawn: null,
  also: [],
  formerly: [],
  body: 'Built over a winter.',
};

const judgedFlight: JudgedFlight = {
  number: 1,
  date: '2027-05-09',
  official: { seconds: 41.7, u: 0.11, ruled: false, explanation: 'mean of two watches' },
  status: 'accepted',
  reason: null,
  setup: null,
  score: 41.7,
  scoreU: 0.11,
  counted: true,
  stale: [],
  reachedTarget: true,
};

const judged: JudgedEntry = {
  entry: 'reedling',
  flights: [judgedFlight],
  bestCounted: 1,
  bestProvisional: null,
  headlineSetup: null,
  divisions: ['free'],
  unplaced: null,
};

const wingLoading: Figure = {
  id: 'wing-loading',
  unit: 'N/m2',
  value: 7.198439619383712,
  u: 0.053,
  basis: 'measured',
  assumptions: [],
  worked: [],
  shares: [],
};
const tailVolume: Figure = { id: 'tail-volume', unit: '1', absent: "needs the tailplane's arm" };
const skeinSection: Figure = {
  id: 'skein-section',
  unit: 'm2',
  value: 3.5e-5,
  u: 1e-6,
  basis: 'measured',
  assumptions: [],
  worked: [],
  shares: [],
};

const modelFigures = {
  entry: new Map<string, Figure>([
    ['wing-loading', wingLoading],
    ['tail-volume', tailVolume],
  ]),
  motors: [new Map<string, Figure>([['skein-section', skeinSection]])],
};

export const entryRecord: EntryRecord = {
  entry,
  challenge: 'long-haul',
  ruling: null,
  judged,
  headline: first,
  figures: modelFigures,
  setupFigures: [modelFigures, { entry: modelFigures.entry, motors: [] }],
  noseBallasts: [],
  timeParts: noTimeParts,
  energyAccount: new Map(),
  stretchesAtLaunch: [],
  logs: { thrust: new Map(), torque: new Map() },
  flights: [{ flight, judged: judgedFlight, figures: { entry: new Map(), motors: [] } }],
  photos: [],
  html: '<p>Built over a winter.</p>',
  junior: false,
  fileToChange: null,
};

const challenge: Challenge = bareChallenge({
  id: 'long-haul',
  title: 'Long Haul',
  target: { time: 40, label: null },
  scoring: { method: 'best', flights: 1, scale: null, provisional: 'apart' },
});

const standing = {
  place: 1,
  entry: 'reedling',
  divisions: ['free'],
  score: 41.7,
  u: 0.11,
  provisional: false,
  flights: [1],
  tieBreak: null,
  withinTimingErrorOf: ['bittern'],
};

export const challengeRecord: ChallengeRecord = {
  challenge,
  state: 'open',
  result: {
    state: 'open',
    entries: new Map([['reedling', judged]]),
    standings: [standing],
    claims: [{ entry: 'reedling', score: 44.2, flights: [2] }],
    unplaced: [{ entry: 'godwit', reason: 'no counted flight' }],
    divisions: new Map([['free', [standing]]]),
  },
  frozen: null,
  places: { overall: new Map(), divisions: new Map() },
  history: noHistory,
  awaiting: [],
  energyUses: [],
  entries: [entryRecord],
  html: '',
};

export const almanac: Almanac = {
  site: {
    format: 1,
    title: 'Long Haul',
    club: null,
    address: null,
    repository: null,
    sendTo: null,
    units: 'metric',
    featured: null,
    logo: null,
    accent: null,
    links: [],
    licence: null,
    body: '',
  },
  siteHtml: '',
  logo: null,
  now: '2027-06-01T00:00:00Z',
  challenges: [challengeRecord],
  featured: 'long-haul',
  builders: [],
  pages: [],
  news: [],
  batches: [],
  leftOut: [],
  redirects: new Map(),
  problems: [],
  files: [],
};

/** The almanac with another text of the builder's, as Markdown and as its HTML. */
export function withText(body: string, html: string): Almanac {
  return {
    ...almanac,
    challenges: [{ ...challengeRecord, entries: [{ ...entryRecord, entry: { ...entry, body }, html }] }],
  };
}
