import { precedesFlight } from '../../src/contest/verdicts/precedes-flight.ts';
import type { Ruling } from '../../src/model/ruling.ts';
import type { Asked } from './ruling-asked.ts';
import type { Subject } from './ruling-subject.ts';

/** What whoever decides may want to look at again; each a sentence on a line. */
export function remarksOn(subject: Subject, asked: Asked, ruling: Ruling): string {
  return unseen(subject, asked, ruling) + beforeFlight(subject, asked, ruling);
}

/** What the challenge asks the evidence to show and the acceptance does not say was seen. */
function unseen({ challenge }: Subject, asked: Asked, ruling: Ruling): string {
  if (asked.is !== 'flight' || asked.verdict !== 'accepted') return '';
  const seen = ruling.flights.find(({ flight }) => flight === asked.flight)?.seen ?? [];
  const missing = challenge.flying.evidence.shows.filter((word) => !seen.includes(word));
  return missing.length === 0
    ? ''
    : `Not in \`seen\`, and asked for by the challenge: ${missing.join(', ')}.\n`;
}

/** A day of the decision that cannot be right: it is written all the same, and `check` says it again. */
function beforeFlight({ entrant }: Subject, asked: Asked, ruling: Ruling): string {
  if (asked.is !== 'flight') return '';
  const flown = entrant.contender.entry.flights.find(({ number }) => number === asked.flight)?.date.date;
  const ruled = ruling.flights.find(({ flight }) => flight === asked.flight);
  if (flown === undefined || ruled === undefined) return '';
  const early = [ruled.date, ruled.received].find((day) => day !== null && precedesFlight(day, flown));
  return early === undefined
    ? ''
    : `The flight is dated ${flown}, after ${early}: correct whichever day is wrong, with --date or --received, or in the entry.\n`;
}
