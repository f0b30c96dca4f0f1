import type { Concern, RulingTold } from '../../src/almanac/review/concern.ts';
import { raisedInText } from '../../src/components/number-text.ts';
import { dayNumber } from '../../src/timing/instant.ts';
import { words } from '../../src/words.ts';
import { secondsTold, type Telling } from './review-told.ts';

const { concern: say, none, more } = words.review;

/** A sentence that lists more than this is read by nobody. */
const mostInSentence = 8;

/** One thing for a person to look at, in a sentence that says what is so and blames nobody. */
export function concernTold(concern: Concern, { quote, sentence, most }: Telling): string {
  const few = (items: readonly string[]) => {
    const shown = Math.min(most, mostInSentence);
    return items.length <= shown ? items : [...items.slice(0, shown), more(items.length - shown)];
  };
  const name = 'name' in concern ? `${quote(concern.name)} (${quote(concern.challenge)})` : '';
  switch (concern.kind) {
    case 'ruled-flights-changed':
      return say.ruledFlights(
        name,
        concern.flights,
        concern.verdict,
        few([
          ...concern.values.map(({ field, before, after }) =>
            say.fieldChanged(quote(inFlight(field)), quoted(before, quote), quoted(after, quote)),
          ),
          ...concern.facts.map(({ what, ruled, now }) =>
            sentence(raisedInText(say.factChanged(what, ruled, now))),
          ),
        ]),
      );
    case 'flight-removed':
      return say.flightRemoved(name, concern.flight, secondsTold(concern.seconds), concern.verdict);
    case 'flight-renumbered':
      return say.flightRenumbered(name, concern.was, concern.flight);
    case 'entry-removed':
      return say.entryRemoved(name);
    case 'entry-not-readable':
      return say.entryNotReadable(name);
    case 'builders-changed':
      return say.buildersChanged(
        name,
        concern.before.map(quote).join(', '),
        concern.after.map(quote).join(', '),
      );
    case 'junior-no-more':
      return say.juniorNoMore(quote(concern.handle));
    case 'organisers-files':
      return say.organisersFiles(few(concern.files.map(quote)), concern.withEntries);
    case 'several-builders':
      return say.severalBuilders(few(concern.handles.map(quote)));
    case 'not-the-author':
      return say.notTheAuthor(name, few(concern.builders.map(quote)), quote(concern.author));
    case 'files-by-others':
      return say.filesByOthers(few(concern.files.map(quote)));
    case 'outside-content':
      return say.outsideContent(few(concern.files.map(quote)));
    case 'flights-count-no-more':
      return say.countNoMore(quote(concern.challenge), concern.flights, concern.aircraft);
    case 'rulings-written':
      return say.rulings(
        name,
        concern.flights,
        concern.before === null ? null : rulingTold(concern.before, quote),
        concern.after === null ? null : rulingTold(concern.after, quote),
        concern.flightChanges,
      );
    case 'handle-by-others':
      return say.handleByOthers(quote(concern.file), quote(concern.handle));
    case 'rules-changed-after-opening':
      return say.rules(
        quote(concern.challenge),
        few(
          concern.changes.map(({ field, before, after }) =>
            say.fieldChanged(quote(field), quote(before), quote(after)),
          ),
        ),
        concern.amendments.map(({ date }) => date),
      );
    case 'flown-after-handing-in':
      return say.flownAfter(name, concern.flight, concern.date, concern.handedIn);
    case 'flown-long-before':
      return say.flownLongBefore(
        name,
        concern.flight,
        concern.date,
        concern.handedIn,
        dayNumber(concern.handedIn) - dayNumber(concern.date),
      );
    case 'handed-in-late':
      return say.handedInLate(name, concern.flights, concern.handedIn, concern.reportBy);
  }
}

/** A ruling on one line: verdict, who, when, and what was said. */
function rulingTold(ruling: RulingTold, quote: Telling['quote']): string {
  const { verdict, by, second, date, received, time, reason, seen } = ruling;
  return [
    say.ruledBy(verdict, [by, ...(second === null ? [] : [second])].map(quote), date),
    ...(time === null ? [] : [say.ruledTime(secondsTold(time))]),
    ...(received === null ? [] : [say.receivedOn(received)]),
    ...(seen.length === 0 ? [] : [say.seen(seen.map(quote))]),
    ...(reason === null ? [] : [quote(reason)]),
  ].join(', ');
}

/** A field's name without the marks around it: the quote brings its own. */
export function bare(field: string): string {
  return field.replaceAll('`', '');
}

/** The same where the flight has been named already. */
function inFlight(field: string): string {
  return bare(field).replace(/ in flight \d+$/, '');
}

/** What stands in a field, or a dash for nothing. */
export function quoted(text: string | null, quote: (text: string) => string): string {
  return text === null ? none : quote(text);
}
