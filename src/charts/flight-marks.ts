import type { Status } from '../contest/standing.ts';
import { tenth } from './chart-parts.ts';

/** What became of a flight, as charts tell it apart: by shape, so that no colour is needed. */
export const markKinds = ['accepted', 'provisional', 'apart', 'attempt', 'struck'] as const;
export type MarkKind = (typeof markKinds)[number];

const kinds: Readonly<Record<Status, MarkKind>> = {
  accepted: 'accepted',
  provisional: 'provisional',
  ineligible: 'apart',
  'outside-dates': 'apart',
  'reported-late': 'apart',
  attempt: 'attempt',
  refused: 'struck',
  void: 'struck',
  withdrawn: 'struck',
};

export function markOf(status: Status): MarkKind {
  return kinds[status];
}

/** Half the width of a mark, in units of the drawing. */
export const markRadius = 5;

/** A mark as an SVG path around a place: full disc, open disc, diamond, triangle, cross. */
export function markPath(kind: MarkKind, x: number, y: number): string {
  return `<path class="chart-flight ${kind}" d="M${tenth(x)} ${tenth(y)}${outlines[kind]}"/>`;
}

/** The ring around the best flight. */
export function bestRing(x: number, y: number): string {
  return `<circle class="chart-best" cx="${tenth(x)}" cy="${tenth(y)}" r="${markRadius + 4}"/>`;
}

const disc = 'm-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z';
const outlines: Readonly<Record<MarkKind, string>> = {
  accepted: disc,
  provisional: disc,
  apart: 'm0 -6l6 6l-6 6l-6 -6z',
  attempt: 'm0 -6l5.5 10h-11z',
  struck: 'm-5 -5l10 10m0 -10l-10 10',
};
