import type { Status } from '../contest/standing.ts';
import type { Basis } from '../figures/figure.ts';
import type { Fact } from '../model/challenge.ts';
import type { AfterRun, Control, Layout, Onboard, OriginOfDesign, Rotation } from '../model/design.ts';
import type { Behaviour, Weather } from '../model/entry.ts';
import type { Verdict } from '../model/ruling.ts';

// What the keys and words of the content format are called on a page.

export const control: Record<Control, string> = { free: 'free flight', guided: 'guided' };
export const onboard: Record<Onboard, string> = {
  release: 'a release',
  dethermaliser: 'a dethermaliser',
  locator: 'a locator',
  altimeter: 'an altimeter',
  stabiliser: 'a stabiliser',
};
export const origin: Record<OriginOfDesign, string> = {
  own: 'the builder’s own design',
  plan: 'built from a plan',
  kit: 'built from a kit',
};
export const layout: Record<Layout, string> = {
  'tail-aft': 'tail behind the wing',
  canard: 'canard',
  tandem: 'tandem wings',
  tailless: 'tailless',
};
export const rotation: Record<Rotation, string> = {
  clockwise: 'clockwise, seen from behind',
  anticlockwise: 'anticlockwise, seen from behind',
};
export const afterRun: Record<AfterRun, string> = {
  folds: 'folds after the run',
  freewheels: 'freewheels after the run',
  stops: 'stops after the run',
  'never-stops': 'still turns at landing',
};
export const behaviour: Record<Behaviour, string> = {
  clean: 'clean',
  stalled: 'stalled',
  dived: 'dived',
  'spiralled-left': 'spiralled to the left',
  'spiralled-right': 'spiralled to the right',
  rolled: 'rolled',
  gust: 'met a gust',
};
export const ended = {
  ground: 'on the ground',
  obstacle: 'in an obstacle',
  water: 'on water',
  'out-of-sight': 'out of sight',
  dethermalised: 'by dethermaliser',
  caught: 'caught',
} as const;
export const launch = { hand: 'thrown by hand', ground: 'off the ground', water: 'off water' } as const;
export const timedBy = { watch: 'watch', video: 'video' } as const;
export const status: Record<Status, string> = {
  withdrawn: 'withdrawn',
  void: 'void',
  refused: 'refused',
  'outside-dates': 'outside the dates',
  'reported-late': 'reported late',
  ineligible: 'does not count',
  attempt: 'attempt',
  accepted: 'accepted',
  provisional: 'provisional',
};
export const statusExplained: Record<Status, string> = {
  withdrawn: 'The builder took it back; it stays on the record.',
  void: 'Struck from the count by a ruling; it uses up no allowance.',
  refused: 'The organiser refused it.',
  'outside-dates': 'It was flown outside the dates of the challenge.',
  'reported-late': 'It was handed in after the reporting deadline.',
  ineligible: 'It does not meet the rules of the challenge.',
  attempt: 'Too short to count: an attempt, on record.',
  accepted: 'The organiser accepted it; it counts.',
  provisional: 'It waits for the organiser’s ruling.',
};
export const basis: Record<Basis, string> = {
  measured: 'measured',
  inspected: 'inspected',
  logged: 'from a bench log',
  'partly assumed': 'partly assumed',
};
export const verdict: Record<Verdict, string> = { accepted: 'accepted', refused: 'refused', void: 'void' };
export const fact: Record<Fact, string> = {
  control: 'Control',
  onboard: 'On board',
  layout: 'Layout',
  origin: 'Origin of the design',
  junior: 'Builder',
};
export const weather: Record<keyof Weather, string> = {
  wind: 'wind',
  temperature: 'temperature',
  pressure: 'pressure',
  humidity: 'humidity',
  elevation: 'elevation',
  surface: 'surface',
};
