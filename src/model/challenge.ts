import type { CalendarDate } from './calendar.ts';

/** A limit on a figure of the model, from a sentence such as "at least 2.4 m"; ends in the figure's SI unit. */
export interface Limit {
  readonly low: { readonly value: number; readonly included: boolean } | null;
  readonly high: { readonly value: number; readonly included: boolean } | null;
  /** The sentence as the organiser wrote it. */
  readonly written: string;
}

export type Fact = 'control' | 'onboard' | 'layout' | 'origin' | 'junior';

/** One condition of eligibility or of a division. */
export type Condition =
  | { readonly kind: 'fact'; readonly fact: Fact; readonly allowed: readonly string[] }
  | { readonly kind: 'figure'; readonly figure: string; readonly limit: Limit };

export interface Division {
  readonly id: string;
  readonly name: string;
  readonly conditions: readonly Condition[];
}

export interface Round {
  readonly id: string;
  /** Seconds. */
  readonly maximum: number;
  readonly flyOff: boolean;
  readonly from: CalendarDate | null;
  readonly to: CalendarDate | null;
}

export type TieBreak =
  | { readonly kind: 'next-best-flight' }
  | { readonly kind: 'figure'; readonly figure: string; readonly prefers: 'larger' | 'smaller' }
  | { readonly kind: 'earlier-flight' };

export interface TimingRules {
  readonly starts: 'release' | 'off-ground';
  readonly stops: { readonly touchdown: boolean; readonly outOfSight: number | null };
  readonly combine: 'mean' | 'median' | 'lowest';
  /** Seconds, as the exact decimal text, such as `0.1`. */
  readonly resolution: string;
  readonly round: 'down' | 'nearest';
  /** Standard uncertainty of one reading, seconds. */
  readonly uncertainty: { readonly watch: number; readonly video: number };
}

export interface FlyingRules {
  readonly launch: readonly ('hand' | 'ground' | 'water')[] | null;
  readonly launchHeight: Limit | null;
  readonly drop: Limit | null;
  readonly release: 'together' | 'staged' | null;
  /** Seconds: a shorter flight is an attempt. */
  readonly attemptBelow: number | null;
  /** Seconds: a longer flight scores this much. */
  readonly maximum: number | null;
  readonly flightsPerDay: number | null;
  readonly flights: number | null;
  readonly timekeepers: { readonly atLeast: number; readonly orVideo: boolean };
  readonly evidence: { readonly links: number; readonly shows: readonly string[] };
}

export interface Scoring {
  readonly method: 'best' | 'sum' | 'mean' | 'rounds';
  /** How many best flights sum and mean take. */
  readonly flights: number;
  readonly scale: { readonly by: string; readonly reference: number; readonly power: number } | null;
  readonly provisional: 'apart' | 'ranked';
}

export interface Amendment {
  readonly date: CalendarDate;
  readonly what: string;
  readonly why: string | null;
}

/** One challenge: the rules as data, SI, defaults filled in. */
export interface Challenge {
  readonly id: string;
  readonly title: string;
  readonly opens: CalendarDate;
  readonly closes: CalendarDate;
  readonly reportBy: CalendarDate | null;
  readonly final: CalendarDate | null;
  readonly timeZone: string | null;
  /** What an official time must reach to be on the honour roll; seconds. */
  readonly target: { readonly time: number; readonly label: string | null } | null;
  readonly milestones: readonly { readonly time: number; readonly label: string }[];
  readonly eligibility: readonly Condition[];
  readonly flying: FlyingRules;
  readonly timing: TimingRules;
  readonly scoring: Scoring;
  readonly tieBreaks: readonly TieBreak[];
  readonly divisions: readonly Division[];
  readonly rounds: readonly Round[];
  /** How long after publication a result may be protested; seconds. */
  readonly protests: number | null;
  readonly amendments: readonly Amendment[];
  readonly formerly: readonly string[];
  readonly body: string;
}

export type ChallengeState = 'announced' | 'open' | 'closed' | 'final';
