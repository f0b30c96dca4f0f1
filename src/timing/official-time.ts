import type { TimingRules } from '../model/challenge.ts';
import type { Flight } from '../model/entry.ts';
import { roundDecimal } from '../quantities/decimal.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { combineWatches } from './combine-watches.ts';

/** The official time of a flight: what the watches give under the challenge's timing rules, or a ruled time. */
export interface OfficialTime {
  /** Seconds, rounded as the rules say, exact to the resolution. */
  readonly seconds: number;
  readonly u: number;
  readonly ruled: boolean;
  /** In words, such as "mean of 41.62 s and 41.80 s, rounded down to 0.1 s". */
  readonly explanation: string;
}

/**
 * The official time in seconds with its standard uncertainty √(u_watch²/n + resolution²/12): n readings combined, and
 * the rounding as a rectangular distribution (JCGM 100:2008, 4.3.7). A ruled time is taken as it is and has the
 * uncertainty of one watch. u_watch is the challenge's own for the way the flight was timed, whatever a reading states.
 * Throws RangeError for a flight without any reading.
 */
export function officialTime(
  flight: Pick<Flight, 'watches' | 'timedBy'>,
  rules: TimingRules,
  ruledSeconds: number | null,
): OfficialTime {
  const watch = rules.uncertainty[flight.timedBy];
  if (ruledSeconds !== null)
    return { seconds: ruledSeconds, u: watch, ruled: true, explanation: `ruled to be ${ruledSeconds} s` };
  const combined = combineWatches(
    flight.watches.map(({ value }) => value),
    rules.combine,
  );
  return {
    seconds: roundDecimal(combined.seconds, rules.resolution, rules.round),
    u: Math.sqrt(watch ** 2 / combined.watches + Number(rules.resolution) ** 2 / 12),
    ruled: false,
    explanation: `${readingsInWords(flight, rules)}, ${roundingInWords(rules)}`,
  };
}

function readingsInWords(
  { watches, timedBy }: Pick<Flight, 'watches' | 'timedBy'>,
  rules: TimingRules,
): string {
  const shown = watches.map(readingInWords);
  if (shown.length === 1)
    return timedBy === 'video' ? `${shown[0]} from the video` : `one watch at ${shown[0]}`;
  const list = `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
  return `${rules.combine} of ${list}${timedBy === 'video' ? ' from the video' : ''}`;
}

/** As the timekeeper wrote it; in plain seconds where nobody did. */
function readingInWords(reading: Quantity): string {
  return reading.written === '' ? `${reading.value} s` : reading.written;
}

function roundingInWords({ round, resolution }: TimingRules): string {
  return round === 'down' ? `rounded down to ${resolution} s` : `rounded to the nearest ${resolution} s`;
}
