import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { classifyPath } from './classify-path.ts';
import type { FileAccount } from './content.ts';
import type { There } from './gathered.ts';
import { slugFault } from './slug-rules.ts';

/** What a walk through the content folder found, sorted by path; nothing was followed out of it. */
export interface Listing {
  readonly files: readonly string[];
  /** Symbolic links and what is neither file nor folder. */
  readonly links: readonly string[];
  /** Files and whole folders passed over by a named rule. */
  readonly ignored: readonly FileAccount[];
  readonly problems: readonly Problem[];
}

/** What is there, before anything is read. */
export function thereIn(listing: Listing): Omit<There, 'sources'> {
  const challenges = new Set<string>();
  const entries = new Set<string>();
  const batches = new Set<string>();
  for (const file of listing.files) {
    const place = classifyPath(file);
    if (place.kind === 'challenge') challenges.add(place.id);
    if (place.kind === 'entry') entries.add(`${place.challenge}/${place.id}`);
    if (place.kind === 'batch') batches.add(place.id);
  }
  return { files: new Set(listing.files), challenges, entries, batches };
}

/** What names and places alone tell: files that belong nowhere, names that cannot stand in an address, missing entry files. */
export function checkListing(listing: Listing): Problem[] {
  const there = thereIn(listing);
  const seen = new Map<string, string>();
  const missing = new Set<string>();
  const problems: Problem[] = listing.links.map((link) =>
    problemOf(link, 'link-not-followed', {
      message: `"${nameOf(link)}" is a link or a device and is not followed: put the file itself here.`,
      accepted: 'files and folders',
    }),
  );
  for (const file of inLowerCaseFirst(listing.files)) {
    const place = classifyPath(file);
    if (place.kind === 'unexpected') problems.push(unexpected(file));
    if (place.kind === 'entry-asset' && !there.entries.has(`${place.challenge}/${place.id}`))
      missing.add(`entries/${place.challenge}/${place.id}`);
    if (!('id' in place) || place.kind === 'entry-asset') continue;
    const twin = `${file.slice(0, file.lastIndexOf('/'))}:${file.toLowerCase()}`.toLowerCase();
    const other = seen.get(twin);
    seen.set(twin, other ?? file);
    // Of a ruling and a result the names are those of what they are about, and are judged there.
    const fault =
      place.kind === 'ruling' || place.kind === 'result' ? null : slugFault(place.id, place.kind === 'news');
    if (fault !== null && other === undefined) problems.push(problemOf(file, fault.code, fault.fields));
    if (other !== undefined) problems.push(taken(file, other));
  }
  return [...problems, ...[...missing].map(entryFileMissing)];
}

/** Of two names that differ by case alone the one in lower case is right, and keeps its address whoever adds the other. */
function inLowerCaseFirst(files: readonly string[]): string[] {
  const isLower = (file: string) => file === file.toLowerCase();
  return [...files.filter(isLower), ...files.filter((file) => !isLower(file))];
}

function taken(file: string, other: string): Problem {
  return problemOf(file, 'name-taken', {
    message: `"${file}" and "${other}" differ by case alone and would have the same address: rename one.`,
    found: file,
    related: { file: other, line: 1, column: 1, endLine: 1, endColumn: 1, message: 'The other one is here.' },
  });
}

function unexpected(file: string): Problem {
  return problemOf(file, 'unexpected-file', {
    message: `"${nameOf(file)}" is no file this folder is for, so it is not published: move it, rename it or delete it.`,
    accepted: accepted.find(([folder]) => file.startsWith(folder))?.[1] ?? accepted.at(-1)?.[1] ?? null,
  });
}

const accepted: readonly (readonly [string, string])[] = [
  ['entries/', 'entries/<challenge>/<entry>/ with entry.md, photos (jpg, png, webp, avif) and logs (csv)'],
  ['rulings/', 'rulings/<challenge>/<entry>.md'],
  ['results/', 'results/<challenge>.json'],
  ['rubber/', 'rubber/<batch>.md and its logs (csv)'],
  ['pages/', 'pages/<slug>.md'],
  ['builders/', 'builders/<handle>.md'],
  ['challenges/', 'challenges/<challenge>.md'],
  ['news/', 'news/<date>-<slug>.md'],
  [
    '',
    'site.md, its logo, and the folders pages, builders, challenges, entries, rulings, results, rubber and news',
  ],
];

function entryFileMissing(folder: string): Problem {
  return problemOf(`${folder}/entry.md`, 'entry-file-missing', {
    message: `The folder ${folder}/ has no entry.md, so nothing in it is published: write one, or delete the folder.`,
    accepted: 'a file entry.md',
  });
}

function nameOf(path: string): string {
  return path.slice(path.lastIndexOf('/') + 1);
}
