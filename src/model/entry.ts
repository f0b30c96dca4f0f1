import type { Quantity } from '../quantities/quantity.ts';
import type { CalendarDate, Moment } from './calendar.ts';
import type { Design } from './design.ts';

export type Behaviour =
  | 'clean'
  | 'stalled'
  | 'dived'
  | 'spiralled-left'
  | 'spiralled-right'
  | 'rolled'
  | 'gust';

/** A builder as the entry names them; a file in content/builders is authoritative where there is one. */
export interface BuilderReference {
  readonly handle: string;
  readonly name: string | null;
  readonly club: string | null;
  readonly junior: boolean;
}

export interface Photo {
  readonly file: string;
  readonly alt: string;
}

/**
 * The aircraft between two changes. The first setup (id null) is the entry as first written; every later one
 * starts from the one before it and overrides what it names.
 */
export interface Setup {
  readonly id: string | null;
  readonly from: CalendarDate | null;
  readonly change: string | null;
  readonly design: Design;
  /**
   * Dotted paths of the values this setup wrote itself, such as `mass.airframe`, `wing.area`, `motors`: an
   * inspection of an earlier setup ends where the very thing it measured is overridden. Empty for the first.
   */
  readonly overrides: readonly string[];
}

export interface Glide {
  readonly date: CalendarDate | null;
  readonly height: Quantity | null;
  readonly distance: Quantity | null;
  readonly time: Quantity | null;
  readonly wind: Quantity | null;
  readonly direction: string | null;
  readonly balance: Quantity | null;
  readonly behaviour: readonly Behaviour[];
  readonly note: string | null;
}

export interface Weather {
  readonly wind: Quantity | null;
  readonly temperature: Quantity | null;
  readonly pressure: Quantity | null;
  readonly humidity: Quantity | null;
  readonly elevation: Quantity | null;
  readonly surface: string | null;
}

export interface Flight {
  /** Unique within the entry, never reused. */
  readonly number: number;
  readonly date: Moment;
  /** Every watch that was read; one for a single `time`. Never empty. */
  readonly watches: readonly Quantity[];
  readonly timedBy: 'watch' | 'video';
  /** At launch: one for each item of motors, or a single number that holds for all; empty where not stated. */
  readonly turns: readonly Quantity[];
  readonly woundTo: readonly Quantity[];
  readonly turnsLeft: readonly Quantity[];
  readonly launchTorque: readonly Quantity[];
  readonly launch: 'hand' | 'ground' | 'water' | null;
  readonly launchHeight: Quantity | null;
  readonly drop: Quantity | null;
  readonly motorsRun: number | null;
  readonly release: { readonly how: string | null; readonly stagger: Quantity | null } | null;
  readonly motorRun: Quantity | null;
  readonly height: Quantity | null;
  readonly behaviour: readonly Behaviour[];
  readonly ended: 'ground' | 'obstacle' | 'water' | 'out-of-sight' | 'dethermalised' | 'caught' | null;
  readonly changed: string | null;
  readonly damage: string | null;
  readonly balance: Quantity | null;
  readonly mass: Quantity | null;
  /** A setup's id; null for "none" (the entry as first written); undefined where the date decides. */
  readonly setup: string | null | undefined;
  readonly round: string | null;
  readonly weather: Weather | null;
  readonly rubber: {
    readonly windsBefore: number | null;
    readonly stretchedTo: Quantity | null;
    readonly temperature: Quantity | null;
    readonly wait: Quantity | null;
  } | null;
  readonly timekeepers: readonly string[];
  readonly flyer: string | null;
  readonly evidence: readonly string[];
  readonly note: string | null;
  readonly withdrawn: boolean;
}

/** One aircraft in one challenge, in SI, checked. */
export interface Entry {
  readonly challenge: string;
  /** The folder's name. */
  readonly id: string;
  readonly name: string;
  /** At least one. */
  readonly builders: readonly BuilderReference[];
  readonly entered: CalendarDate | null;
  readonly photos: readonly Photo[];
  /** The entry as first written, then its setups by `from` (in file order where equal). */
  readonly setups: readonly [Setup, ...Setup[]];
  readonly glides: readonly Glide[];
  /** In number order. */
  readonly flights: readonly Flight[];
  readonly withdrawn: { readonly date: CalendarDate | null; readonly reason: string | null } | null;
  /** `<challenge>/<entry>` of the same aircraft elsewhere. */
  readonly also: readonly string[];
  readonly formerly: readonly string[];
  /** The builder's own text, Markdown. */
  readonly body: string;
}
