import type { Severity } from './problem.ts';

/**
 * What a problem takes off the site where the site is published all the same: the whole file (an entry, a ruling, a
 * page), one photo, one log, or nothing.
 */
export type Costs = 'file' | 'photo' | 'log' | 'nothing';

export interface CodeOfProblem {
  readonly severity: Severity;
  readonly costs: Costs;
  /** One line for the list of codes in the documentation. */
  readonly means: string;
}

function error(costs: Costs, means: string) {
  return { severity: 'error', costs, means } as const;
}

function warning(means: string) {
  return { severity: 'warning', costs: 'nothing', means } as const;
}

function note(means: string) {
  return { severity: 'note', costs: 'nothing', means } as const;
}

/** Every code there is. A code is never given a second meaning. */
export const problemCodes = {
  // Reading a file
  'not-utf-8': error('file', 'The bytes of a file are not UTF-8 text.'),
  'unreadable-file': error('file', 'A file could not be read from the disk.'),
  'file-too-large': error('file', 'A file is larger than its limit.'),
  'no-front-matter': error('file', 'The first line of a file is not exactly `---`.'),
  'front-matter-not-closed': error(
    'file',
    'The line `---` that ends the front matter is missing or not alone.',
  ),
  'front-matter-too-large': error('file', 'The front matter is larger than 256 kB.'),
  'forbidden-character': error('file', 'A control or bidirectional-override character stands in the text.'),
  'yaml-syntax': error('file', 'The front matter is not YAML.'),
  'not-json': error('file', 'A result file is not JSON.'),
  'front-matter-not-fields': error('file', 'The front matter is a list or a single text instead of fields.'),
  'nested-too-deeply': error('file', 'The front matter nests lists and maps more than 8 deep.'),
  'yaml-anchor': error('file', 'An anchor or an alias (`&name`, `*name`) stands in the front matter.'),
  'yaml-tag': error('file', 'A tag (`!name`) stands in the front matter.'),
  'merge-key': error('file', 'A merge key (`<<`) stands in the front matter.'),
  'duplicate-key': error('file', 'A key stands twice in one map.'),
  'second-document': error('file', 'The front matter holds more than one YAML document.'),
  'key-not-text': error('file', 'A key is empty, a list or a map.'),
  'key-without-value': error('file', 'A word stands in braces without a colon and a value.'),
  'comma-in-braces': error('file', 'A decimal comma inside braces, where YAML splits.'),

  // The folder
  'unexpected-file': warning('A file stands where no file of that kind belongs; it is ignored.'),
  'link-not-followed': error(
    'nothing',
    'A symbolic link stands in the content folder; links are not followed.',
  ),
  'bad-name': error('file', 'The name of a file or folder is not made of a-z, 0-9 and hyphens.'),
  'reserved-name': error('file', 'The name of a file or folder is one the site itself needs.'),
  'name-taken': error('file', 'Two files have the same name but for case, or would have the same address.'),
  'entry-file-missing': error('file', 'A folder below entries/ has no entry.md.'),
  'site-file-missing': error('nothing', 'The content folder has no site.md.'),
  'former-name-taken': error('nothing', 'An old name leads to two places, or is in use.'),

  // Photos
  'photo-missing': error('photo', 'An entry names a photo that is not in its folder.'),
  'photo-name': error('photo', 'A photo is not a plain file name ending in jpg, png, webp or avif.'),
  'photo-too-many': error('photo', 'An entry has more than 12 photos.'),
  'photo-too-large': error('photo', 'A photo is larger than 15 MB or 60 megapixels.'),
  'photo-large': warning('A photo is larger than 3 MB.'),
  'photo-unreadable': error('photo', 'A photo cannot be read as a picture.'),
  'photo-format': error('photo', 'The content of a photo is of another format than its name says.'),
  'photo-location': warning('A photo carries the place where it was taken.'),

  // Logs
  'log-missing': error('log', 'A log is named that is not in the folder.'),
  'log-name': error('log', 'A log is not a plain file name ending in csv.'),
  'log-too-long': error('log', 'A log is larger than 20 MB or has more than 200,000 rows.'),
  'log-text': error('log', 'A log is not UTF-8 text, or holds characters that do not belong there.'),
  'log-header': error('log', 'The header of a log does not name the columns and units it needs.'),
  'log-value': error('log', 'A value in a log is not a number.'),
  'log-order': error('log', 'Time or turns in a log go back.'),
  'log-empty': error('log', 'A log has too few rows.'),

  // Between files
  'unused-file': warning('A photo or log stands in a folder, but nothing names it.'),
  'unknown-challenge': error('file', 'A file belongs to a challenge that does not exist.'),
  'unknown-entry': error('file', 'A ruling belongs to an entry that does not exist.'),
  'unknown-flight': error('nothing', 'A ruling names a flight that the entry does not have.'),
  'unknown-batch': error('nothing', 'A motor names a batch of rubber that does not exist.'),
  'unknown-reference': error('nothing', 'A file names a challenge or entry that does not exist.'),
  'builder-differs': note('An entry names its builder otherwise than the builder’s own file.'),
  'logo-missing': error('photo', 'site.md names a logo that is not there.'),
} as const satisfies Readonly<Record<string, CodeOfProblem>>;

export type ProblemCode = keyof typeof problemCodes;

/** What a code costs; a code that is not in the list costs the file. */
export function costOf(code: string): Costs {
  return Object.hasOwn(problemCodes, code) ? problemCodes[code as ProblemCode].costs : 'file';
}
