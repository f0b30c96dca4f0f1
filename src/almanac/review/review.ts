import type { RuleChange } from '../../contest/rules/rule-changes.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { ChangedFile } from './changed-files.ts';
import type { ChangedFlight } from './changed-flights.ts';
import type { ChangedPlaces } from './changed-places.ts';
import type { ChangedValue } from './changed-values.ts';
import type { Concern } from './concern.ts';
import type { MovedFigure } from './moved-figures.ts';
import type { ProblemsBetween } from './problems-between.ts';

/** What a change does to one aircraft. */
export interface ReviewedEntry {
  readonly challenge: string;
  readonly entry: string;
  readonly name: string;
  /** Handles. */
  readonly builders: readonly string[];
  /**
   * `touched` by nothing in its own folder: a ruling, the rules or its rubber changed. `readable-again` was there before and
   * could not be read.
   */
  readonly change:
    | 'added'
    | 'readable-again'
    | 'changed'
    | 'renamed'
    | 'removed'
    | 'not-readable'
    | 'touched';
  /** The name of its folder before, where it was renamed. */
  readonly was: string | null;
  readonly entered: CalendarDate | null;
  /** Values outside flights. */
  readonly values: readonly ChangedValue[];
  /** Whether the text below the fields is not what it was. */
  readonly text: boolean;
  readonly flights: readonly ChangedFlight[];
  readonly figures: readonly MovedFigure[];
  /** What its figures now take for granted, and did not before. */
  readonly assumptions: readonly string[];
  /** Photos and logs. */
  readonly attached: readonly ChangedFile[];
}

/** A file that is of no entry, with what changed in it. */
export interface ReviewedFile extends Omit<ChangedFile, 'place'> {
  readonly kind: string;
  readonly values: readonly ChangedValue[];
  readonly text: boolean;
}

/** The rules of a challenge that are not what they were. */
export interface ReviewedRules {
  readonly challenge: string;
  readonly changes: readonly RuleChange[];
}

/** What a change of the content folder does. The JSON of `review` has this shape, with `format: 1`. */
export interface Review {
  /** The moment both sides are looked at. */
  readonly now: string;
  readonly handedIn: CalendarDate | null;
  readonly entries: readonly ReviewedEntry[];
  readonly files: readonly ReviewedFile[];
  readonly rules: readonly ReviewedRules[];
  readonly places: readonly ChangedPlaces[];
  readonly problems: ProblemsBetween;
  readonly concerns: readonly Concern[];
}
