import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { ChallengeRecord } from '../../src/almanac/almanac.ts';
import { todayIn } from '../../src/almanac/today.ts';
import { limitsUnchecked } from '../../src/contest/rules/limits-unchecked.ts';
import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { isMissing, problemsIn } from '../../src/entries/begin/problems-in.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import type { Challenge } from '../../src/model/challenge.ts';
import { UsageError } from '../terminal/command-line.ts';
import { pathFrom, printProblems } from '../terminal/print-problems.ts';
import { printable } from '../terminal/printable.ts';
import { writeWhole } from '../terminal/ruled-file.ts';
import { askFields } from './ask-fields.ts';
import type { Asker } from './asking.ts';
import { knownChallenge } from './challenges.ts';
import type { Told } from './command.ts';
import { type Making, missingOf, refuseFaults, sentences } from './making.ts';

/** What is said once it is written: what it is, and what comes next. */
export interface Said {
  readonly done: string;
  readonly next: readonly string[];
}

/** What a command was told, and who is there to be asked. */
export interface Finish extends Pick<Told, 'fields' | 'folder' | 'now' | 'isDryRun'> {
  readonly asker: Asker | null;
  /** Writes what goes beside the file. */
  readonly beside?: (() => Promise<void>) | null;
  /** The challenge that a new aircraft enters: what its limits rest on is asked for, and named where it is not told. */
  readonly enters?: Challenge | null;
  /** What is still lacking though every field that is needed is there, in a sentence; null where nothing is. */
  readonly lacking?: (fields: PlainMap) => string | null;
}

/**
 * Asks for what is missing where somebody is there to answer, writes the new thing, and says what `check` says of it; gives the exit
 * code. A new file may lack what is to be filled in; a file that is there gets nothing that it would not be read with.
 */
export async function finish(
  making: Making,
  { fields: given, folder, now, isDryRun, asker, beside, lacking = () => null, enters = null }: Finish,
  said: (fields: PlainMap) => Said,
): Promise<number> {
  refuseFaults(making, given);
  const isAsked = asker !== null && (missingOf(making, given).length > 0 || lacking(given) !== null);
  const fields = isAsked ? await askFields(making, given, asker, enters) : given;
  const missing = missingOf(making, fields);
  if (missing.length > 0 && making.old !== null)
    throw new UsageError(`${sentences(missing)}\nNothing is written.`);
  const lacks = lacking(fields);
  if (lacks !== null) throw new UsageError(`${lacks}\nNothing is written.`);
  const text = making.textWith(fields);
  if (isDryRun) {
    process.stdout.write(`Nothing is written. ${making.file} would be:\n\n${text}\n`);
    process.stdout.write(foretold(folder, making, text, now));
    return 0;
  }
  await beside?.();
  await write(folder, making, text);
  const { done, next } = said(fields);
  process.stdout.write(`${done}\n`);
  process.stdout.write(await checked(folder, making, missing, now, enters));
  for (const step of next) process.stdout.write(`${step}\n`);
  return 0;
}

async function write(folder: string, { file, old }: Making, text: string): Promise<void> {
  const path = join(folder, file);
  if (old === null) {
    await mkdir(dirname(path), { recursive: true });
    return writeFile(path, text, { flag: 'wx' });
  }
  // Answering takes its time, and an editor may have the file open.
  if ((await readFile(path, 'utf8')) !== old)
    throw new UsageError(`${file} was changed meanwhile and is left as it is. Begin again.`);
  return writeWhole(path, text);
}

/** What `check` would say of a file by itself; what is to be filled in stands in it as remarks. */
function foretold(folder: string, { file }: Making, text: string, now: string): string {
  const challenge = /^entries\/([^/]+)\//.exec(file)?.[1];
  const zone = challenge === undefined ? null : knownChallenge(folder, challenge, now).challenge?.timeZone;
  const found = problemsIn(file, text, todayIn(now, zone ?? null)).filter((problem) => !isMissing(problem));
  return found.length === 0 ? '' : `\`check\` would say:\n${sentences(found)}\n`;
}

/** What `check` says of a file: what is to be filled in, then everything else with its place. */
async function checked(
  folder: string,
  { file }: Making,
  missing: readonly Problem[],
  now: string,
  enters: Challenge | null,
): Promise<string> {
  // What reads a whole folder takes its time to load: nobody who is asked waits for it.
  const { readAlmanac } = await import('../../src/almanac/read-almanac.ts');
  const { problems, challenges } = await readAlmanac({ content: folder, now });
  const own = problems.filter((problem) => problem.file === file);
  printProblems(
    own.filter((problem) => !isMissing(problem)),
    folder,
    process.stdout,
  );
  const check = `\`npm run check -- ${pathFrom(process.cwd(), folder)(file)}\``;
  if (own.length === 0 || missing.length === 0) {
    const clean = own.length === 0 ? `${check} finds nothing wrong with it.\n` : '';
    return enters === null ? clean : clean + unchecked(challenges, file);
  }
  return `To be filled in, where a line of the file begins with #; until then ${check} says so:\n${sentences(missing)}\n`;
}

/** Which limits of its challenge nobody can check yet on a new aircraft, a line each. */
function unchecked(challenges: readonly ChallengeRecord[], file: string): string {
  const lines = challenges.flatMap(({ challenge, entries }) =>
    entries
      .filter(({ entry }) => file === `entries/${challenge.id}/${entry.id}/entry.md`)
      .flatMap(({ figures }) => limitsUnchecked(challenge, figures)),
  );
  return lines.length === 0
    ? ''
    : `Until it says more, no flight of it can count:\n${lines.map((line) => `  ${printable(line)}\n`).join('')}`;
}
