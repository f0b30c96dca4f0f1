import type { AwaitingFlight } from '../../src/almanac/awaiting/awaiting.ts';
import type { ForOrganiser } from '../../src/almanac/awaiting/for-organiser.ts';
import { formatSeconds } from '../../src/quantities/format.ts';
import { words } from '../../src/words.ts';
import { printableLine } from './printable.ts';

const say = words.awaiting;

/** What is printed after a command, to name the content folder again; empty for the usual one. */
export type ContentOption = string;

const deadlineNames = {
  opens: 'opens',
  closes: 'last day to fly',
  'report-by': 'last day to hand in flights',
  protests: 'last day for protests',
  final: 'the result becomes final',
} as const;

/** What awaits the organiser of one challenge, in sections; an empty one is left out. */
export function awaitingText(one: ForOrganiser, content: ContentOption): string {
  const lines = [
    printableLine(`${one.title} (${one.challenge}), ${one.state} on ${one.today}`),
    ...section('Flights that wait', flights(one, content)),
    ...section('Changed after a ruling', changed(one)),
    ...section('Entries left out, being looked at', [...one.leftOut]),
    ...section('Worth another look', doubts(one)),
    ...section(
      'Handles to ask about',
      one.handles.map(
        ({ file, handle, earlier }) =>
          `${file} names ${handle}; the earlier files of that handle came from other authors: ${earlier.join(', ')}`,
      ),
    ),
    ...section('Rules changed after the opening', rules(one)),
    ...section(
      'Dates to come',
      one.deadlines.map(({ date, kind }) => `${date}  ${deadlineNames[kind]}`),
    ),
    ...(one.closeNow
      ? ['', `  The day of the final result has come: npm run close -- ${one.challenge}${content}`]
      : []),
  ];
  return lines.length === 1 ? `${lines[0]}\n  ${say.none}\n` : `${lines.join('\n')}\n`;
}

/** The command that accepts a flight, to be completed by whoever decides. */
export function rulingCommand(
  one: Pick<ForOrganiser, 'challenge' | 'shows'>,
  entry: string,
  flight: number,
  content: ContentOption,
): string {
  const seen = one.shows.length === 0 ? '' : ` --seen ${one.shows.join(',')}`;
  return `npm run ruling -- ${one.challenge}/${entry} ${flight} accept --by …${seen}${content}`;
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${printableLine(line)}`)];
}

function flights(one: ForOrganiser, content: ContentOption): string[] {
  return one.awaiting.flatMap(({ entry, name, flights: waiting }) => [
    `${name} (${entry})`,
    ...waiting.flatMap((flight) => [
      `  flight ${flight.number}, ${time(flight)}, flown ${say.flownOn(flight.date, flight.days)}`,
      ...flight.waits.map((wait) => `    waits for ${say.wait(wait)}`),
      `    ${say.wouldDo(flight.place)}`,
      `    ${rulingCommand(one, entry, flight.number, content)}`,
    ]),
  ]);
}

function time({ seconds }: AwaitingFlight): string {
  return formatSeconds(seconds, '0.01');
}

function changed(one: ForOrganiser): string[] {
  return one.changedAfterRuling.map(({ entry, flight, verdict, ruledOn, received, changes }) => {
    const what = changes.map((change) => say.change(change.what, change.ruled, change.now)).join('; ');
    const handedIn = received === null ? '' : `, handed in ${received}`;
    const stands = verdict === 'accepted' ? '' : '; the verdict stands until ruled anew';
    return `${entry} flight ${flight}, ${verdict} on ${ruledOn}${handedIn}: ${what}${stands}`;
  });
}

function doubts({ doubts: all }: ForOrganiser): string[] {
  return all.map(({ file, line, message }) => `${file}:${line} ${message}`);
}

function rules({ rules: all }: ForOrganiser): string[] {
  return all.flatMap(({ date, version, changes, amendments }) => [
    `${date}, ${version ?? 'not committed yet'}`,
    ...changes.map(({ field, before, after }) => `  ${field}: ${before} → ${after}`),
    amendments.length === 0
      ? '  no amendment of that day or later tells of it'
      : `  may be told by the amendment of ${amendments.map((amendment) => amendment.date).join(', ')}`,
  ]);
}
