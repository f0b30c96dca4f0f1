import { existsSync, readdirSync, realpathSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { nearestSlug, slugFault } from '../../src/entries/folder/slug-rules.ts';
import { didYouMean } from '../../src/entries/problems/did-you-mean.ts';
import { UsageError } from '../terminal/command-line.ts';
import { printable } from '../terminal/printable.ts';

/** The names of all challenges of a content folder, sorted. */
export function challengesIn(folder: string): readonly string[] {
  const path = join(folder, 'challenges');
  if (!existsSync(path)) return [];
  return readdirSync(path)
    .flatMap((name) => (name.endsWith('.md') ? [name.slice(0, -'.md'.length)] : []))
    .sort();
}

/** The names of all entries of a challenge, sorted. */
export function entriesIn(folder: string, challenge: string): readonly string[] {
  const path = join(folder, 'entries', challenge);
  if (!existsSync(path)) return [];
  return readdirSync(path)
    .filter((name) => existsSync(join(path, name, 'entry.md')))
    .sort();
}

export interface EntryPlace {
  readonly challenge: string;
  readonly entry: string;
  readonly file: string;
}

/** Where an entry stands, by what was typed. Throws a UsageError for a name that may not be one, and for an unknown challenge. */
export function entryPlace(folder: string, typed: string): EntryPlace {
  const [challenge = '', entry, more] = typed.split('/');
  if (entry === undefined || more !== undefined)
    throw new UsageError(
      `"${printable(typed)}" does not name an entry: write the name of its challenge, a stroke and its own name, such as ${challengesIn(folder)[0] ?? 'summer-2027'}/${nearestSlug(more ?? typed) ?? 'lantern'}.`,
    );
  knownChallenge(folder, challenge);
  goodName(entry);
  return { challenge, entry, file: `entries/${challenge}/${entry}/entry.md` };
}

/** Throws a UsageError where there is no such challenge. */
function knownChallenge(folder: string, challenge: string): void {
  const known = challengesIn(folder);
  if (known.includes(challenge)) return;
  const near = didYouMean(challenge, known);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  const there =
    known.length === 0 ? 'none yet; begin one with `npm run new -- challenge <challenge>`' : known.join(', ');
  throw new UsageError(`There is no challenge "${printable(challenge)}"; there is ${there}.${hint}`);
}

/** Throws a UsageError where a name may not be part of an address. */
export function goodName(name: string): void {
  const fault = slugFault(name);
  if (fault !== null) throw new UsageError(printable(fault.fields.message));
}

/** Throws a UsageError where something stands at a place already, or the place is not really in the content folder. */
export function freePlace(folder: string, file: string, hint: string): void {
  if (existsSync(join(folder, file)))
    throw new UsageError(`There is ${file} already, and it is left as it is. ${hint}`);
  insideOnly(folder, file);
}

/** Throws a UsageError where a link on the way leads out of the content folder. */
export function insideOnly(folder: string, file: string): void {
  let there = join(folder, file);
  while (!existsSync(there)) there = dirname(there);
  const way = relative(realpathSync(folder), realpathSync(there));
  if (way === '..' || way.startsWith(`..${sep}`))
    throw new UsageError(`${file} would be outside the content folder: a link on the way leads out of it.`);
}

/** Throws a UsageError where an aircraft is not there, or is not really in the content folder. */
export function presentFile(folder: string, { challenge, entry, file }: EntryPlace): void {
  insideOnly(folder, file);
  if (existsSync(join(folder, file))) return;
  const known = entriesIn(folder, challenge);
  const near = didYouMean(entry, known);
  const there = known.length === 0 ? 'there is none yet' : `there is ${known.join(', ')}`;
  throw new UsageError(
    `There is no aircraft "${entry}" in ${challenge}; ${there}.${near === null ? '' : ` Did you mean "${near}"?`} ` +
      `\`npm run new -- entry ${challenge}/${entry}\` begins one.`,
  );
}
