import type { Review, ReviewedEntry } from '../../src/almanac/review/review.ts';
import { words } from '../../src/words.ts';
import type { Quote } from './review-told.ts';

const say = words.review.gist;

/** What a change does, in one sentence: what it writes, what that does to places, and whether errors are left. */
export function reviewGist(review: Review, quote: Quote): string {
  const does = [...ofEntries(review, quote), ...ofFiles(review, quote)];
  if (does.length === 0) return say.nothing;
  const errors = review.problems.fresh.filter(({ severity }) => severity === 'error').length;
  const sentence = [inOne(does), ofPlaces(review, quote), ...(errors > 0 ? [say.errors(errors)] : [])].join(
    '; ',
  );
  return `${sentence.slice(0, 1).toUpperCase()}${sentence.slice(1)}.`;
}

function inOne(parts: readonly string[]): string {
  return parts.length < 3 ? parts.join(' and ') : `${parts.slice(0, -1).join(', ')}, and ${parts.at(-1)}`;
}

function ofEntries({ entries }: Review, quote: Quote): string[] {
  const named = ({ name, challenge }: ReviewedEntry) => `${quote(name)} (${quote(challenge)})`;
  const told = (
    some: readonly ReviewedEntry[],
    one: (entry: ReviewedEntry) => string,
    many: (count: number) => string,
  ) =>
    some.length === 0 ? [] : [some.length === 1 && some[0] !== undefined ? one(some[0]) : many(some.length)];
  const by = (...changes: ReviewedEntry['change'][]) =>
    entries.filter(({ change }) => changes.includes(change));
  const added = by('added');
  const changed = by('changed', 'renamed');
  return [
    ...told(
      added,
      (entry) => say.adds(named(entry), entry.flights.length),
      (count) => say.addsMany(count, added.flatMap(({ flights }) => flights).length),
    ),
    ...told(
      changed,
      (entry) => changeOf(named(entry), entry),
      (count) => say.changesMany(count, partsOf(changed)),
    ),
    ...told(by('readable-again'), (entry) => say.readableAgain(named(entry)), say.readableAgainMany),
    ...told(by('removed'), (entry) => say.removes(named(entry)), say.removesMany),
    ...told(by('not-readable'), (entry) => say.notReadable(named(entry)), say.notReadableMany),
  ];
}

/** Flights of another day are what most changes bring. */
function changeOf(name: string, entry: ReviewedEntry): string {
  const written = entry.flights.filter(({ change }) => change !== 'judged');
  const only =
    entry.values.length === 0 && written.length > 0 && written.every(({ change }) => change === 'added');
  return only ? say.addsFlights(name, written.length) : say.changes(name, partsOf([entry]));
}

function partsOf(entries: readonly ReviewedEntry[]): string[] {
  const flights = entries.flatMap((entry) => entry.flights);
  const count = (...changes: (typeof flights)[number]['change'][]) =>
    flights.filter(({ change }) => changes.includes(change)).length;
  const [added, changed, removed] = [count('added'), count('changed', 'renumbered'), count('removed')];
  const values = entries.flatMap((entry) => entry.values).length;
  return [
    ...(added > 0 ? [say.flightsAdded(added)] : []),
    ...(changed > 0 ? [say.flightsChanged(changed)] : []),
    ...(removed > 0 ? [say.flightsRemoved(removed)] : []),
    ...(values > 0 ? [say.valuesChanged(values)] : []),
  ];
}

function ofFiles({ files }: Review, quote: Quote): string[] {
  const idOf = (file: string) => quote(file.replace(/^[a-z]+\//, '').replace(/\.[a-z]+$/, ''));
  const rulings = files.filter(({ kind }) => kind === 'ruling');
  const known = ['ruling', 'challenge', 'result'];
  const others = files.filter(({ kind }) => !known.includes(kind));
  return [
    ...(rulings.length > 0 ? [say.rulings(rulings.length)] : []),
    ...files
      .filter(({ kind }) => kind === 'challenge')
      .map(({ change, file }) => say.challenge(change, idOf(file))),
    ...files
      .filter(({ kind }) => kind === 'result')
      .map(({ change, file }) => say.result(change, idOf(file))),
    ...(others.length > 0 ? [say.others(others.length)] : []),
  ];
}

function ofPlaces({ places }: Review, quote: Quote): string {
  const moved = places.flatMap(({ overall }) => overall).filter(({ before, after }) => before !== after);
  const [first] = moved;
  if (first === undefined) return say.nobodyMoves;
  return moved.length === 1
    ? say.oneMoves(quote(first.name), first.before, first.after)
    : say.manyMove(moved.length);
}
