import type { Challenge } from '../../model/challenge.ts';
import { todayIn } from '../today.ts';
import { changedFiles } from './changed-files.ts';
import { changedPlaces } from './changed-places.ts';
import { countNoMore } from './concerns/count-no-more.ts';
import { goneFlights } from './concerns/gone-flights.ts';
import { handInDates } from './concerns/hand-in-dates.ts';
import { ruledFlights } from './concerns/ruled-flights.ts';
import { rulesAmended } from './concerns/rules-amended.ts';
import { whoseFiles } from './concerns/whose-files.ts';
import { writtenRulings } from './concerns/written-rulings.ts';
import { entryPairs } from './entry-pairs.ts';
import type { HandedIn } from './history.ts';
import { problemsBetween } from './problems-between.ts';
import type { Review } from './review.ts';
import { reviewedEntry } from './reviewed-entry.ts';
import { reviewedFiles } from './reviewed-files.ts';
import { challengesOf, reviewedRules } from './reviewed-rules.ts';
import type { Sides } from './side.ts';

/** What a change of the content folder does: to what is written, to figures, places and rulings, and what a person should look at. */
export function reviewOf(sides: Sides, handedIn: HandedIn): Review {
  const { now } = sides.after.almanac;
  const files = changedFiles(sides);
  const pairs = entryPairs(sides, files);
  const entries = pairs.flatMap((pair) => reviewedEntry(pair, files, sides) ?? []);
  const dayIn = ({ timeZone }: Challenge) => handedIn.on ?? todayIn(now, timeZone);
  return {
    now,
    handedIn: handedIn.on,
    entries,
    files: reviewedFiles(sides, files),
    rules: reviewedRules(sides),
    places: changedPlaces(sides),
    problems: problemsBetween(sides),
    concerns: [
      ...(handedIn.outside.length > 0 ? [{ kind: 'outside-content', files: handedIn.outside } as const] : []),
      ...ruledFlights(sides, pairs, entries),
      ...writtenRulings(pairs, entries),
      ...countNoMore(entries),
      ...goneFlights(entries),
      // Rules are in force once they are taken over, whenever they were written.
      ...rulesAmended(sides, ({ timeZone }) => todayIn(now, timeZone)),
      ...whoseFiles(sides, files, pairs, handedIn),
      ...handInDates(
        entries.filter(({ change }) => change !== 'readable-again'),
        challengesOf(sides.after),
        dayIn,
      ),
    ],
  };
}
