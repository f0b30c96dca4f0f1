import type { PhotoFault, PhotoReading } from '../photos/photo-reading.ts';
import { didYouMean } from '../problems/did-you-mean.ts';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Disk } from './disk.ts';
import type { Reference } from './references.ts';

/** What reads the files that stand beside the texts. */
export interface Attachments {
  readonly disk: Disk;
  /** Plain names of the files in each folder, sorted; folders end with `/`, the content folder itself is empty. */
  readonly folders: ReadonlyMap<string, readonly string[]>;
  readPhoto(file: string, bytes: Uint8Array): Promise<PhotoReading>;
  tooManyBytes(file: string, bytes: number): PhotoFault | null;
}

/** Something read, with what is wrong with it. */
export interface With<Thing> {
  readonly value: Thing;
  readonly problems: readonly Problem[];
}

/** The plain names of the files in each folder, in the order of the paths. */
export function foldersOf(files: Iterable<string>): Map<string, string[]> {
  const folders = new Map<string, string[]>();
  for (const file of files) {
    const folder = folderOf(file);
    const names = folders.get(folder) ?? [];
    if (names.length === 0) folders.set(folder, names);
    names.push(file.slice(folder.length));
  }
  return folders;
}

/** The folder a file stands in, with `/` at its end. */
export function folderOf(file: string): string {
  return file.slice(0, file.lastIndexOf('/') + 1);
}

/** The names beside a text, the text's own included. */
export function namesBeside(source: SourceDocument, from: Attachments): readonly string[] {
  return from.folders.get(folderOf(source.file)) ?? [];
}

/** A name without a way out of its folder. */
export function isPlainName(name: string): boolean {
  return !/[/\\]|^\.|\.\./.test(name) && name.length <= 100;
}

/** A name without what makes two names look alike: case, and whether an accent is part of its letter. */
function folded(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

function endingOf(name: string): string {
  return name.slice(name.lastIndexOf('.')).toLowerCase();
}

/** The file that was probably meant by a name that none has, and whether the two look alike. */
export function nearestName(
  name: string,
  beside: readonly string[],
): { readonly name: string; readonly looksAlike: boolean } | null {
  const same = beside.find((other) => folded(other) === folded(name));
  if (same !== undefined) return { name: same, looksAlike: true };
  const alike = beside.filter((other) => endingOf(other) === endingOf(name));
  const near = didYouMean(name, alike);
  return near === null ? null : { name: near, looksAlike: false };
}

/** The problem of a name that no file beside the text has. */
export function missingFile(
  source: SourceDocument,
  { name, node }: Reference,
  from: Attachments,
  code: ProblemCode,
): Problem {
  const found = nearestName(name, namesBeside(source, from));
  const near = found?.name ?? null;
  const hint =
    near === null
      ? ''
      : found?.looksAlike !== true
        ? ` Did you mean "${near}"?`
        : ` There is "${near}": names must agree in upper and lower case${near.toLowerCase() === name.toLowerCase() ? '' : ', and letters with accents in how they are put together, so name the file without them'}.`;
  return problemOver(source, node.start, node.end, code, {
    message: `"${name}" is named here, but there is no such file beside this one.${hint}`,
    found: name,
    accepted: 'the name of a file in the same folder',
    suggestion: near,
  });
}
