import type { CalendarDate } from './calendar.ts';
import type { Inspected } from './design.ts';

export type Verdict = 'accepted' | 'refused' | 'void';

export interface Inspection extends Inspected {
  readonly date: CalendarDate;
  readonly by: string;
}

/**
 * A fact or figure as it stood when the ruling was made. Facts are text, a list or a yes/no; figures are numbers in the SI
 * unit of the figure, a list for a figure of motors.
 */
export type RuledValue = string | boolean | readonly string[] | number | readonly number[];

export interface FlightRuling {
  readonly flight: number;
  readonly verdict: Verdict;
  readonly by: string;
  readonly date: CalendarDate;
  readonly second: string | null;
  /** When the flight was handed in, where the organiser noted it. */
  readonly received: CalendarDate | null;
  readonly reason: string | null;
  /** An official time in seconds, taken as it is. */
  readonly time: number | null;
  readonly seen: readonly string[];
  readonly kept: string | null;
  readonly seal: string | null;
  readonly asRuled: Readonly<Record<string, RuledValue>>;
  readonly earlier: readonly {
    readonly verdict: Verdict;
    readonly by: string | null;
    readonly date: CalendarDate | null;
    readonly reason: string | null;
  }[];
}

/** The organiser's decisions about one entry. */
export interface Ruling {
  readonly challenge: string;
  readonly entry: string;
  readonly inspections: readonly Inspection[];
  readonly flights: readonly FlightRuling[];
  readonly disqualified: { readonly reason: string; readonly by: string; readonly date: CalendarDate } | null;
  readonly body: string;
}
