/** The official time of a flight: what the watches give under the challenge's timing rules, or a ruled time. */
export interface OfficialTime {
  /** Seconds, rounded as the rules say, exact to the resolution. */
  readonly seconds: number;
  readonly u: number;
  readonly ruled: boolean;
  /** In words, such as "mean of 41.62 s and 41.80 s, rounded down to 0.1 s". */
  readonly explanation: string;
}
