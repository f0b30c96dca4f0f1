import type { AcceptedFlight } from '../contest/history/accepted-flight.ts';
import type { CalendarDate } from '../model/calendar.ts';
import type { Almanac, ChallengeRecord } from './almanac.ts';
import type { FlightHappening, Happening } from './happening.ts';

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
 * What happened in one challenge lately, the newest first, each flight once: an acceptance is not told again where the
 * flight did more than being accepted.
 */
export function latelyIn(record: ChallengeRecord, count: number): readonly Happening[] {
  const told = new Set<string>();
  const isNew = (flight: AcceptedFlight): boolean => {
    const name = `${flight.entry}/${flight.number}`;
    return !told.has(name) && told.add(name) !== undefined;
  };
  return newestFirst(inChallenge(record))
    .flatMap((happening): Happening[] => {
      if ('flight' in happening) return isNew(happening.flight) ? [happening] : [];
      if (happening.kind !== 'accepted') return [happening];
      const flights = happening.flights.filter(isNew);
      return flights.length === 0 ? [] : [{ ...happening, flights }];
    })
    .slice(0, count);
}

function inChallenge(record: ChallengeRecord): Happening[] {
  return [...frozen(record), ...amended(record), ...flown(record), ...accepted(record), ...entered(record)];
}

/** A challenge becomes final on the day its result was frozen. */
function frozen(record: ChallengeRecord): Happening[] {
  if (record.frozen === null) return [];
  const id = `frozen/${firstName(record.challenge)}`;
  return [{ kind: 'frozen', id, date: record.frozen.closed.slice(0, 10), record }];
}

/** An amendment goes by its day, further ones of that day by their order. */
function amended(record: ChallengeRecord): Happening[] {
  const { amendments } = record.challenge;
  return amendments.map((amendment, index): Happening => {
    const { date } = amendment;
    const before = amendments.slice(0, index).filter((other) => other.date === date).length;
    const id = `amended/${firstName(record.challenge)}/${date}${before === 0 ? '' : `/${before + 1}`}`;
    return { kind: 'amended', id, date, record, amendment };
  });
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
  ];
}

/** Acceptances, all of an entry and a day in one: a day of forty flights must not push everything else out. */
function accepted(record: ChallengeRecord): Happening[] {
  const days = Map.groupBy([...record.history.flights].reverse(), (flight) =>
    [acceptedOn(record, flight), flight.entry].join(' '),
  );
  return [...days].flatMap(([day, flights]): Happening[] => {
    const [date = '', entry = ''] = day.split(' ');
    const id = `accepted/${firstName(record.challenge)}/${nameOfEntry(record, entry)}/${date}`;
    return [{ kind: 'accepted', id, date, record, entry, flights }];
  });
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

/** On one day, news come first, then results and rules, then what flights did, the last flown first, then new aircraft. */
function newestFirst(happenings: readonly Happening[]): readonly Happening[] {
  const rank = {
    news: 0,
    frozen: 1,
    amended: 2,
    'target-reached': 3,
    'best-time': 4,
    accepted: 5,
    entered: 6,
  };
  return [...happenings].sort((a, b) => compare(b.date, a.date) || rank[a.kind] - rank[b.kind]);
}

function compare(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
