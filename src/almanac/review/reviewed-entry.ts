import { describeShape } from '../../entries/describe/describe-shape.ts';
import { entry as schema } from '../../entries/schema/entry.ts';
import type { ChangedFile } from './changed-files.ts';
import { changedFlights } from './changed-flights.ts';
import { changedValues } from './changed-values.ts';
import type { EntryPair } from './entry-pairs.ts';
import { assumptionsOf, movedFigures } from './moved-figures.ts';
import { withoutNames } from './names-of-juniors.ts';
import type { ReviewedEntry } from './review.ts';
import type { Side, Sides } from './side.ts';

/** What became of one aircraft; null where nothing of it is other than it was. */
export function reviewedEntry(
  pair: EntryPair,
  files: readonly ChangedFile[],
  sides: Sides,
): ReviewedEntry | null {
  const { before: was, after: is } = pair;
  const known = (is ?? was)?.read.value ?? null;
  const renamed = was !== null && is !== null && was.read.value.id !== is.read.value.id;
  const values =
    is === null ? [] : changedValues(was?.read.source ?? null, is.read.source, describeShape(schema));
  const own = values.filter(({ flight }) => flight === null);
  const flights = is === null ? [] : changedFlights(pair, values, sides.after);
  const figures = is === null ? [] : movedFigures(was?.record.figures ?? null, is.record.figures);
  const taken = new Set(was === null ? [] : assumptionsOf(was.record.figures));
  if (!pair.touched && flights.length === 0 && figures.length === 0) return null;
  const folder = `entries/${pair.challenge}/${pair.entry}/`;
  return {
    challenge: pair.challenge,
    entry: pair.entry,
    name: known?.name ?? pair.entry,
    builders: known?.builders.map(({ handle }) => handle) ?? [],
    change: changeOf(pair, renamed, sides),
    was: renamed ? was.read.value.id : null,
    entered: is?.read.value.entered ?? null,
    values: hasJunior(pair) ? withoutNames(own, 'entry') : own,
    text: is !== null && was !== null && is.read.source.body !== was.read.source.body,
    flights,
    figures,
    assumptions: is === null ? [] : assumptionsOf(is.record.figures).filter((one) => !taken.has(one)),
    attached: files.filter(({ file, place }) => place.kind === 'entry-asset' && file.startsWith(folder)),
  };
}

function hasJunior({ before, after }: EntryPair): boolean {
  return [before, after].some((side) => side?.record.entry.builders.some(({ junior }) => junior) === true);
}

function changeOf(
  { challenge, entry, before, after, touched }: EntryPair,
  renamed: boolean,
  sides: Sides,
): ReviewedEntry['change'] {
  const leftOut = ({ content }: Side) =>
    content.leftOut.some((one) => one.challenge === challenge && one.entry === entry);
  // What was never there can only be something new that nobody can read, such as a link in the place of the file.
  if (after === null) return leftOut(sides.after) || before === null ? 'not-readable' : 'removed';
  if (before === null) return leftOut(sides.before) ? 'readable-again' : 'added';
  if (renamed) return 'renamed';
  return touched ? 'changed' : 'touched';
}
