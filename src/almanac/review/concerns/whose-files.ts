import { handlesByOthers } from '../../awaiting/handles-by-others.ts';
import type { ChangedFile } from '../changed-files.ts';
import type { Concern } from '../concern.ts';
import type { EntryPair } from '../entry-pairs.ts';
import type { HandedIn } from '../history.ts';
import type { Sides } from '../side.ts';

/** What makes the contest and the site; an entry needs none of it. */
const ofOrganisers = ['challenge', 'ruling', 'result', 'site', 'page', 'news', 'asset'];

/** Files that others answer for, and handles that others have written so far. */
export function whoseFiles(
  sides: Sides,
  files: readonly ChangedFile[],
  pairs: readonly EntryPair[],
  handedIn: HandedIn,
): readonly Concern[] {
  const touched = pairs.filter(({ touched: own }) => own);
  return [
    ...organisers(files, touched.length > 0),
    ...several(touched),
    ...touched.flatMap((pair) => buildersOf(pair, handedIn.author)),
    ...juniors(sides),
    ...byOthers(files, handedIn),
    ...handles(sides, touched, handedIn),
  ];
}

function organisers(files: readonly ChangedFile[], withEntries: boolean): Concern[] {
  const theirs = files.filter(({ place }) => ofOrganisers.includes(place.kind)).map(({ file }) => file);
  return theirs.length === 0 ? [] : [{ kind: 'organisers-files', files: theirs, withEntries }];
}

/** What organisers answer for is told as theirs; what was put back as it was is nobody's matter. */
function byOthers(files: readonly ChangedFile[], handedIn: HandedIn): Concern[] {
  const told = files
    .filter(({ file, place }) => handedIn.byOthers.includes(file) && !ofOrganisers.includes(place.kind))
    .map(({ file }) => file);
  return told.length === 0 ? [] : [{ kind: 'files-by-others', files: told }];
}

/** Aircraft that have no builder in common. */
function several(touched: readonly EntryPair[]): Concern[] {
  const teams = touched.map(handlesOf).filter((team) => team.length > 0);
  const [first = []] = teams;
  if (teams.length < 2 || first.some((handle) => teams.every((team) => team.includes(handle)))) return [];
  return [{ kind: 'several-builders', handles: [...new Set(teams.flat())].sort() }];
}

function buildersOf(pair: EntryPair, author: string | null): Concern[] {
  const { challenge, entry } = pair;
  const name = (pair.after ?? pair.before)?.read.value.name ?? entry;
  const [before, after] = [buildersIn(pair.before), buildersIn(pair.after)];
  const told: Concern[] = [];
  if (pair.before !== null && pair.after !== null && before.join() !== after.join())
    told.push({ kind: 'builders-changed', challenge, entry, name, before, after });
  const builders = handlesOf(pair);
  if (author !== null && builders.length > 0 && !builders.includes(author.toLowerCase()))
    told.push({ kind: 'not-the-author', challenge, entry, name, author, builders });
  return told;
}

/** Who built it until now: nobody gives himself an aircraft by writing his name into it. */
function handlesOf({ before, after }: EntryPair): readonly string[] {
  return buildersIn(before ?? after);
}

function buildersIn(side: EntryPair['before']): readonly string[] {
  return side?.read.value.builders.map(({ handle }) => handle) ?? [];
}

function juniors(sides: Sides): Concern[] {
  const juniorsOf = ({ almanac }: Sides['before']) =>
    almanac.builders.filter(({ builder }) => builder.junior).map(({ builder }) => builder.handle);
  const now = new Map(sides.after.almanac.builders.map(({ builder }) => [builder.handle, builder.junior]));
  return juniorsOf(sides.before)
    .filter((handle) => now.get(handle) === false)
    .map((handle) => ({ kind: 'junior-no-more', handle }));
}

function handles(sides: Sides, touched: readonly EntryPair[], { files }: HandedIn): Concern[] {
  if (files === null) return [];
  const { builders, entries } = sides.after.content;
  const naming = [
    ...builders.map(({ value, source }) => ({ file: source.file, handle: value.handle })),
    ...entries.flatMap(({ value, source }) =>
      value.builders.map(({ handle }) => ({ file: source.file, handle })),
    ),
  ];
  const fresh = new Set(
    touched.flatMap(({ before, after }) => (before === null && after !== null ? after.read.source.file : [])),
  );
  return handlesByOthers(naming, files)
    .filter(({ file }) => fresh.has(file))
    .map(({ file, handle }) => ({ kind: 'handle-by-others', file, handle }));
}
