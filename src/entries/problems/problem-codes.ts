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
  'typographic-quotes': warning('A value stands in typographic quotes, which stay in the text.'),
  'comma-in-braces': error('file', 'A decimal comma inside braces, where YAML splits.'),

  // What is written in a field
  'missing-field': error('file', 'A required field is missing.'),
  'empty-field': error('file', 'A key stands without a value.'),
  'too-long': error('file', 'The text of a field is longer than is accepted.'),
  'unknown-key': error('file', 'A key is not known in this place.'),
  'key-not-here': error('file', 'A key that is known elsewhere has no meaning in this place.'),
  'wrong-shape': error('file', 'A list, a map or a single value stands where another of the three belongs.'),
  'not-a-quantity': error('file', 'A text cannot be read as a number with its unit.'),
  'missing-unit': error('file', 'A number has no unit.'),
  'unknown-unit': error('file', 'A unit is not known.'),
  'wrong-kind-of-unit': error('file', 'A unit is of another kind than the field.'),
  'ambiguous-number': error('file', 'A number can be read in two ways.'),
  'impossible-value': error('file', 'A value cannot be.'),
  'unknown-word': error('file', 'A word is not one of the closed set that belongs there.'),
  'not-yes-or-no': error('file', 'A value is neither true nor false.'),
  'not-a-date': error('file', 'A text is no date of the calendar, or no date as it is written here.'),
  'not-a-slug': error('file', 'A name has characters that have no place in an address.'),
  'not-an-entry': error('file', 'A text does not name a challenge and an entry.'),
  'not-a-link': error('file', 'A text is not an address of the web.'),
  'not-a-mail-address': error('file', 'A text is not a mail address.'),
  'not-a-colour': error('file', 'A text is not a colour.'),
  'not-a-time-zone': error('file', 'A text is not the name of a time zone.'),
  'not-an-allowance': error('file', 'A text does not say how many flights are allowed.'),
  'not-a-number-of-timekeepers': error('file', 'A text does not say how many timekeepers are needed.'),
  'more-mistakes': error('file', 'The fields of a file have more mistakes than are listed.'),
  'more-doubts': warning('The fields of a file have more mistakes and doubts than are listed.'),
  'too-many-items': error('file', 'A list has more items than are accepted.'),
  'not-a-seal': error('file', 'A text is not a seal as the command writes it.'),

  // Within an entry
  'time-and-watches': error('file', 'A flight gives both a time and its watches.'),
  'time-missing': error('file', 'A flight gives neither a time nor watches.'),
  'mass-missing': error('file', 'An entry gives neither its airframe mass nor its flying mass.'),
  'duplicate-flight': error('file', 'Two flights of an entry have the same number.'),
  'duplicate-id': error('file', 'Two items of a list have the same id.'),
  'duplicate-builder': error('file', 'A builder is named twice in one entry.'),
  'junior-named': warning(
    'More than the handle is written of a junior, which pages leave out and files keep.',
  ),
  'setup-named-none': error('file', 'A setup is called none, which means the entry as first written.'),
  'setups-same-day': error('file', 'Two setups hold from the same day on.'),
  'unknown-setup': error('file', 'A flight names a setup that the entry does not have.'),
  'one-for-each-motor': error('file', 'A list does not have one value for each item of motors.'),
  'more-motors-than-fitted': error('file', 'A flight ran more motors than the model has.'),
  'stabiliser-is-guided': error('file', 'A stabiliser is on board of a model that is said to be free.'),
  'span-differs': warning('The span of the panels differs from the span by more than 2 %.'),
  'area-differs': warning('The area differs from that of the panels by more than 2 %.'),
  'chord-differs': warning('The mean chord differs from area divided by span by more than 2 %.'),
  'skein-incomplete': warning('Too little is given of a skein to reckon with it.'),
  'odd-strands': note('A skein has an odd number of strands.'),
  'break-turns-apart': warning('The break turns of skeins like each other lie far apart.'),
  'more-places-than-motors': warning('A kind of motor has more places on the span than motors.'),
  'fewer-places-than-motors': note('A kind of motor has fewer places on the span than motors.'),
  'parts-heavier-than-whole': warning('The parts weigh more than the airframe or the flying model.'),
  'motor-run-beyond-flight': warning('The motors of a flight ran longer than the model flew.'),
  'turns-disagree': warning('The turns of a flight contradict each other.'),
  'watches-apart': note('The watches of a flight read more than 0.5 s apart.'),
  'watches-identical': note('The watches of a flight read the same to the hundredth of a second.'),
  'flight-before-setup': warning('A flight names a setup that holds from a later day on.'),
  'name-hard-to-read': warning('A name mixes alphabets in a word, or holds a character that cannot be seen.'),
  'improbable-value': warning('A value is far outside what such things measure.'),

  // Within a challenge
  'dates-out-of-order': error('file', 'Dates that follow each other stand in the wrong order.'),
  'final-before-protests': warning('A result becomes final while it can still be protested.'),
  'unknown-figure': error('file', 'A rule names a figure that does not exist.'),
  'figure-not-of-model': error('file', 'A rule names a figure that is not of the model.'),
  'unknown-tie-break': error('file', 'A step of the tie-break is not known.'),
  'rounds-not-used': error('file', 'Rounds are given, but the method is another one.'),
  'rounds-missing': error('file', 'The method is rounds, but none is given.'),
  'not-with-rounds': error('file', 'A rule is given that has no meaning with rounds.'),
  'flights-not-used': warning('A number of flights is given that the method does not use.'),

  // Within a ruling, an announcement, a frozen result
  'duplicate-ruling': error('file', 'A flight is ruled twice.'),
  'reason-missing': warning('A flight is refused or void, and no reason is given.'),
  'second-is-the-first': warning('A decision is confirmed by the one who made it.'),
  'name-differs': error('file', 'The date in a file and in its name differ.'),
  'not-a-frozen-result': error('file', 'A result file is not as the command writes it.'),

  // The folder
  'unexpected-file': warning('A file stands where no file of that kind belongs; it is ignored.'),
  'unreadable-folder': error('nothing', 'A folder could not be read from the disk.'),
  'link-not-followed': error(
    'nothing',
    'A symbolic link stands in the content folder; links are not followed.',
  ),
  'bad-name': error('file', 'The name of a file or folder is not made of a-z, 0-9 and hyphens.'),
  'reserved-name': error('file', 'The name of a file or folder is one the site itself needs.'),
  'name-taken': error('file', 'Two files have the same name but for case.'),
  'entry-file-missing': error('file', 'A folder below entries/ has no entry.md.'),
  'site-file-missing': error('nothing', 'The content folder has no site.md.'),
  'former-name-taken': error('nothing', 'An old name leads to two places, or is in use.'),

  // Photos
  'picture-in-text': warning('A picture stands in the text, where only its words are shown.'),
  'photo-missing': error('photo', 'An entry names a photo that is not in its folder.'),
  'photo-name': error('photo', 'A photo is not a plain file name ending in jpg, png, webp or avif.'),
  'photo-too-many': error('photo', 'An entry has more than 12 photos.'),
  'photo-too-large': error('photo', 'A photo is larger than 15 MB or 60 megapixels.'),
  'photo-large': warning('A photo is larger than 3 MB.'),
  'photo-unreadable': error('photo', 'A photo cannot be read as a picture.'),
  'photo-format': error('photo', 'The content of a photo is of another format than its name says.'),
  'photo-location': warning('A photo carries the place where it was taken.'),

  // The text
  'text-as-written': warning('A text has too much in it to be read as Markdown.'),
  'table-not-read': warning('The head of a table and its row of hyphens differ in their cells.'),

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
  'ruled-by-builder': warning('A flight is ruled by one of the builders of its model.'),
  'ruled-before-flight': warning('A flight is ruled on, or handed in, before the day on which it was flown.'),
  'evidence-not-seen': note('An acceptance does not name everything that the evidence must show.'),
  'unknown-batch': error('nothing', 'A motor names a batch of rubber that does not exist.'),
  'unknown-round': error('nothing', 'A flight names a round that its challenge does not have.'),
  'unknown-reference': error('nothing', 'A file names a challenge or entry that does not exist.'),
  'evidence-twice': note('Two flights of a challenge show the same link.'),
  'strip-differs': warning('A skein’s strip differs from that of its batch by more than 10 %.'),
  'builder-differs': note('An entry names its builder otherwise than the builder’s own file.'),
  'no-address': note('The site does not say where it is published, which its links go by.'),
  'logo-missing': error('photo', 'The site names a logo that is not there.'),

  // Between what is written and what follows from it
  'flight-does-not-count': note('A flight does not count under the rules of its challenge.'),
  'flight-in-future': warning('A flight is dated after the day of the build.'),
  'final-result-differs': note('A frozen result would come out differently today; the frozen one stands.'),
  'acceptance-lapsed': warning('An acceptance no longer fits what is written, or carries no seal.'),
  'skein-mass-differs': warning('A skein weighs less than 0.8 or more than 1.25 times what its strip gives.'),
  'turns-above-break': warning('A flight has more turns than those at which the motor should break.'),
  'turns-near-break': note('A flight has more than 0.95 of the turns at which the motor should break.'),
  'wing-loading-improbable': warning('Mass and wing give a loading far outside what such models carry.'),
  'balance-beside-wing': warning('The balance lies ahead of the wing or behind it.'),
  'balance-behind-neutral-point': note('The balance lies behind the neutral point.'),
  'glide-beyond-ideal': note('A test glide went further than an ideal wing of its measures would.'),
  'time-above-ceiling': note('A best time is above the upper bound for still air.'),
  'time-above-prediction': note('A best time is far above what the figures of the model give in still air.'),
  'also-differs': note('Two entries of one aircraft give different measures.'),
  'photo-twice': note('An entry shows the same picture twice.'),
} as const satisfies Readonly<Record<string, CodeOfProblem>>;

export type ProblemCode = keyof typeof problemCodes;

/** What a code costs; a code that is not in the list costs the file. */
export function costOf(code: string): Costs {
  return Object.hasOwn(problemCodes, code) ? problemCodes[code as ProblemCode].costs : 'file';
}
