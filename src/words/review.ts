import type { PlaceIfAccepted } from '../almanac/awaiting/awaiting.ts';
import { listed } from '../contest/ranking/listed.ts';
import { awaiting, ordinal } from './awaiting.ts';
import { counted, dateInWords } from './texts.ts';

// What people wrote comes into these sentences already made safe for where they are printed.

function aircraft(count: number): string {
  return counted(count, 'aircraft', 'aircraft');
}

function flights(count: number): string {
  return counted(count, 'flight');
}

/** "moves from 4th to 2nd"; a place that stays needs no sentence. */
function moves(before: number | null, after: number | null): string {
  if (before === null) return after === null ? 'has no place' : `is placed ${ordinal(after)}`;
  return after === null ? 'loses its place' : `moves from ${ordinal(before)} to ${ordinal(after)}`;
}

/** "flight 3", "flights 1 and 2". */
function numbered(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? 'flight' : 'flights'} ${listed(numbers.map(String))}`;
}

export const review = {
  gist: {
    nothing: 'Nothing in the content changes.',
    adds: (name: string, count: number) =>
      `adds the aircraft ${name}${count === 0 ? '' : ` with ${flights(count)}`}`,
    addsMany: (count: number, flown: number) =>
      `adds ${aircraft(count)}${flown === 0 ? '' : ` with ${flights(flown)}`}`,
    changes: (name: string, parts: readonly string[]) =>
      parts.length === 0 ? `changes ${name}` : `changes ${name}, with ${listed(parts)}`,
    addsFlights: (name: string, count: number) => `adds ${flights(count)} to ${name}`,
    changesMany: (count: number, parts: readonly string[]) =>
      parts.length === 0 ? `changes ${aircraft(count)}` : `changes ${aircraft(count)}, with ${listed(parts)}`,
    flightsAdded: (count: number) => `${flights(count)} more`,
    flightsChanged: (count: number) => `${flights(count)} changed`,
    flightsRemoved: (count: number) => `${flights(count)} taken out`,
    valuesChanged: (count: number) => counted(count, 'other value'),
    removes: (name: string) => `takes out the aircraft ${name}`,
    removesMany: (count: number) => `takes out ${aircraft(count)}`,
    readableAgain: (name: string) => `makes ${name} readable again`,
    readableAgainMany: (count: number) => `makes ${aircraft(count)} readable again`,
    notReadable: (name: string) => `leaves ${name} so that it cannot be read`,
    notReadableMany: (count: number) => `leaves ${aircraft(count)} that cannot be read`,
    rulings: (count: number) => `writes rulings on ${aircraft(count)}`,
    challenge: (change: string, name: string) =>
      change === 'added'
        ? `adds the challenge ${name}`
        : change === 'removed'
          ? `takes out the challenge ${name}`
          : `changes the challenge ${name}`,
    result: (change: string, name: string) =>
      change === 'added' ? `freezes the result of ${name}` : `changes the final result of ${name}`,
    others: (count: number) => `changes ${counted(count, 'other file')}`,
    nobodyMoves: 'nobody’s place changes',
    oneMoves: (name: string, before: number | null, after: number | null) =>
      `${name} ${moves(before, after)}`,
    manyMove: (count: number) => `${aircraft(count)} have another place`,
    errors: (count: number) => `${counted(count, 'new error')} to mend first`,
  },
  headings: {
    look: 'For a person to look at',
    nothingToLook: 'Nothing here asks for a second look.',
    places: 'Places',
    divisions: 'Places in divisions',
    waits: 'What the new flights wait for',
    values: 'What was understood',
    flights: 'Flights',
    figures: 'Figures',
    assumptions: 'Taken for granted, for want of a measurement',
    attached: 'Photos and logs',
    rules: 'Rules',
    files: 'Other files',
    gone: 'Mended with this change',
  },
  columns: {
    aircraft: 'Aircraft',
    field: 'Field',
    figure: 'Figure',
    before: 'Before',
    after: 'Now',
    read: 'Understood',
    score: 'Score',
    flight: 'Flight',
    date: 'Flown',
    time: 'Time',
    status: 'Status',
    change: 'Change',
  },
  change: {
    added: 'new',
    changed: 'changed',
    words: 'only words changed',
    removed: 'taken out',
    renumbered: 'numbered anew',
    judged: 'judged otherwise',
    renamed: 'renamed',
    'not-readable': 'cannot be read yet',
    'readable-again': 'can be read again',
    touched: 'not written, but other than before',
  },
  none: '–',
  noPlace: 'no place',
  asWritten: 'as written',
  more: (count: number) => `and ${count} more`,
  textChanged: 'the text below the fields',
  files: (count: number) => counted(count, 'file'),
  entered: (entered: string, handedIn: string) =>
    `Says it was entered on ${dateInWords(entered)}; handed in on ${dateInWords(handedIn)}.`,
  folder: (was: string, is: string) => `Its folder was ${was} and is ${is}.`,
  placesOf: (challenge: string, division: string | null) =>
    division === null ? challenge : `${challenge}, division ${division}`,
  waits: (name: string, flight: number, time: string, waits: readonly string[], place: PlaceIfAccepted) =>
    `${name}, flight ${flight}, ${time}: waits for ${waits.join('; and for ')}. ${awaiting.wouldDo(place)}`,
  problem: (place: string, severity: string, message: string) => `${place}, ${severity}: ${message}`,
  concern: {
    ruledFlights: (
      name: string,
      flights: readonly { readonly number: number; readonly ruledOn: string }[],
      verdict: string,
      changes: readonly string[],
    ) =>
      `${name}, ${numbered(flights.map(({ number }) => number))}: ${verdict} on ${listed([...new Set(flights.map(({ ruledOn }) => dateInWords(ruledOn)))])}, and changed with this: ${changes.join('; ')}. ${
        verdict === 'accepted'
          ? `${flights.length === 1 ? 'It waits' : 'They wait'} for a new ruling.`
          : 'The ruling stands until there is a new one.'
      }`,
    fieldChanged: (field: string, before: string, after: string) => `${field} was ${before} and is ${after}`,
    factChanged: awaiting.change,
    flightRemoved: (name: string, flight: number, time: string, verdict: string | null) =>
      `${name}, flight ${flight} (${time}${verdict === null ? '' : `, ${verdict}`}) is taken out. A builder takes a flight back with \`withdrawn: true\`, and it stays on the record.`,
    flightRenumbered: (name: string, was: number, is: number) =>
      `${name}, flight ${was} is now flight ${is}. Numbers are never used again, so that rulings keep to their flight.`,
    entryRemoved: (name: string) =>
      `${name} is taken out. An aircraft that leaves says so with \`withdrawn\`, and its page stays.`,
    entryNotReadable: (name: string) => `${name} cannot be read as it stands and would be left out.`,
    buildersChanged: (name: string, before: string, after: string) =>
      `${name}: its builder was ${before} and would be ${after}.`,
    juniorNoMore: (handle: string) =>
      `${handle} went by handle alone, as a junior does, and would not any more. What is published cannot be called back.`,
    organisersFiles: (files: readonly string[], withEntries: boolean) =>
      `${listed(files)}: organisers answer for ${files.length === 1 ? 'this file' : 'these files'}${withEntries ? '; an entry needs none of them' : ''}.`,
    severalBuilders: (handles: readonly string[]) =>
      `Files of several builders change at once: ${listed(handles)}.`,
    notTheAuthor: (name: string, builders: readonly string[], author: string) =>
      `${name} is by ${listed(builders)}, and this comes from ${author}.`,
    filesByOthers: (files: readonly string[]) =>
      `${listed(files)}: until now others wrote in ${files.length === 1 ? 'it' : 'them'}.`,
    outsideContent: (files: readonly string[]) =>
      `${listed(files)}: outside the content folder; an entry needs none of ${files.length === 1 ? 'it' : 'them'}.`,
    countNoMore: (challenge: string, count: number, of: number) =>
      `${challenge}: ${counted(count, 'accepted flight')} of ${aircraft(of)}, written as before, would not count any more.`,
    rulings: (
      name: string,
      numbers: readonly number[],
      before: string | null,
      after: string | null,
      flightChanges: boolean,
    ) =>
      `${name}, ${numbered(numbers)}: ${
        after === null ? 'the ruling is taken out' : `ruled ${after}`
      }${before === null ? '' : `; before: ${before}`}.${
        flightChanges && before !== null ? ' What is ruled on changes in the same go.' : ''
      }`,
    ruledBy: (verdict: string, by: readonly string[], date: string) =>
      `${verdict} by ${listed(by)} on ${dateInWords(date)}`,
    ruledTime: (time: string) => `official time ${time}`,
    receivedOn: (date: string) => `received ${dateInWords(date)}`,
    seen: (what: readonly string[]) => `seen: ${what.join(', ')}`,
    handleByOthers: (file: string, handle: string) =>
      `${file} names ${handle}, and what there was of ${handle} came from others.`,
    rules: (challenge: string, changes: readonly string[], amendments: readonly string[]) =>
      `${challenge}: rules change while it is open: ${changes.join('; ')}. ${
        amendments.length === 0
          ? 'No amendment tells of it.'
          : `It may be told by the amendment of ${listed(amendments.map(dateInWords))}.`
      }`,
    flownAfter: (name: string, flight: number, date: string, handedIn: string) =>
      `${name}, flight ${flight}: dated ${dateInWords(date)}, after ${dateInWords(handedIn)}, when it was handed in.`,
    flownLongBefore: (name: string, flight: number, date: string, handedIn: string, days: number) =>
      `${name}, flight ${flight}: flown ${dateInWords(date)}, handed in ${dateInWords(handedIn)}, ${counted(days, 'day')} later.`,
    handedInLate: (name: string, flights: readonly number[], handedIn: string, reportBy: string) =>
      `${name}, ${numbered(flights)}: handed in ${dateInWords(handedIn)}, after ${dateInWords(reportBy)}, the last day for it. What came to you earlier says so with \`received\` in its ruling.`,
  },
} as const;
