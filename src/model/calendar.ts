/** A calendar date as `YYYY-MM-DD`, checked to exist. Compared as text. */
export type CalendarDate = string;

/** When something happened at the flying place: always a calendar date there, sometimes a time and an offset. */
export interface Moment {
  readonly date: CalendarDate;
  /** `HH:MM` or `HH:MM:SS`, local at the flying place. */
  readonly time: string | null;
  /** Minutes east of UTC; null where the builder did not state it. */
  readonly offset: number | null;
  readonly written: string;
}
