import type { AcceptedFlight } from '../contest/history/accepted-flight.ts';
import type { CalendarDate } from '../model/calendar.ts';
import type { NewsPost } from '../model/site.ts';
import type { Almanac, ChallengeRecord } from './almanac.ts';

/** Something that happened to a flight, told once it was accepted. */
export type FlightHappening = 'accepted' | 'best-time' | 'target-reached';

interface Dated {
  /**
   * A name that stays, whatever becomes of titles and times: the kind, then the first names of challenge, entry or post.
   * Unique within a site.
   */
  readonly id: string;
  readonly date: CalendarDate;
}

/** One dated thing that readers may want to hear of. */
export type Happening = Dated &
  (
    | { readonly kind: 'entered'; readonly record: ChallengeRecord; readonly entry: string }
    | { readonly kind: FlightHappening; readonly record: ChallengeRecord; readonly flight: AcceptedFlight }
    | { readonly kind: 'frozen'; readonly record: ChallengeRecord }
    | { readonly kind: 'news'; readonly post: NewsPost; readonly html: string }
  );

/** Everything that happened on the site, the newest first. */
export function happeningsOf({ challenges, news }: Almanac): readonly Happening[] {
  return newestFirst([
    ...challenges.flatMap(inChallenge),
    ...news.map(
      ({ post, html }): Happening => ({
        kind: 'news',
        id: `news/${firstName(post)}`,
        date: post.date,
        post,
        html,
      }),
    ),
  ]);
}

/**
 * What happened in one challenge lately, the newest first, one line for each flight: an acceptance is not told again
 * where the flight did more than being accepted.
 */
export function latelyIn(record: ChallengeRecord, count: number): readonly Happening[] {
  const all = newestFirst(inChallenge(record));
  const flights = new Set<string>();
  return all
    .filter((happening) => {
      if (!('flight' in happening)) return true;
      const flight = `${happening.flight.entry}/${happening.flight.number}`;
      if (flights.has(flight)) return false;
      flights.add(flight);
      return true;
    })
    .slice(0, count);
}

function inChallenge(record: ChallengeRecord): Happening[] {
  return [...frozen(record), ...flown(record), ...entered(record)];
}

/** A challenge becomes final on the day its result was frozen. */
function frozen(record: ChallengeRecord): Happening[] {
  if (record.frozen === null) return [];
  const id = `frozen/${firstName(record.challenge)}`;
  return [{ kind: 'frozen', id, date: record.frozen.closed.slice(0, 10), record }];
}

/** What accepted flights did. It is known from the day of the ruling on, so that day is its date. */
function flown(record: ChallengeRecord): Happening[] {
  const { history } = record;
  const happening = (kind: FlightHappening, flight: AcceptedFlight): Happening => ({
    kind,
    id: `${kind}/${firstName(record.challenge)}/${nameOfEntry(record, flight.entry)}/${flight.number}`,
    date: acceptedOn(record, flight),
    record,
    flight,
  });
  const [reached] = history.honour;
  return [
    ...(reached === undefined ? [] : [happening('target-reached', reached.first)]),
    // The first accepted flight of a challenge beat nothing.
    ...history.time
      .filter(({ gain }) => gain !== null)
      .map(({ flight }) => happening('best-time', flight))
      .reverse(),
    ...history.flights.map((flight) => happening('accepted', flight)).reverse(),
  ];
}

/** An aircraft is in from the day it was entered, where nobody wrote that down from its first flight. */
function entered(record: ChallengeRecord): Happening[] {
  return record.entries.flatMap(({ entry }): Happening[] => {
    const days = entry.flights.map(({ date }) => date.date).sort();
    const date = entry.entered ?? days[0];
    if (date === undefined || entry.withdrawn !== null) return [];
    const id = `entered/${firstName(record.challenge)}/${firstName(entry)}`;
    return [{ kind: 'entered', id, date, record, entry: entry.id }];
  });
}

function acceptedOn({ entries }: ChallengeRecord, { entry, number, flown }: AcceptedFlight): CalendarDate {
  const ruling = entries.find((one) => one.entry.id === entry)?.ruling ?? null;
  return ruling?.flights.find(({ flight }) => flight === number)?.date ?? flown.date;
}

function nameOfEntry({ entries }: ChallengeRecord, id: string): string {
  const known = entries.find((one) => one.entry.id === id);
  return known === undefined ? id : firstName(known.entry);
}

/** The name a thing had first: former names are written down in the order they were given. */
function firstName({ id, formerly }: { readonly id: string; readonly formerly: readonly string[] }): string {
  return formerly[0] ?? id;
}

/** On one day, news come first, then results, then what flights did, the last flown first, then new aircraft. */
function newestFirst(happenings: readonly Happening[]): readonly Happening[] {
  const rank = { news: 0, frozen: 1, 'target-reached': 2, 'best-time': 3, accepted: 4, entered: 5 };
  return [...happenings].sort((a, b) => compare(b.date, a.date) || rank[a.kind] - rank[b.kind]);
}

function compare(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
