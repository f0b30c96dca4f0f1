import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { entrantsOf } from '../src/almanac/entrants.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { todayIn } from '../src/almanac/today.ts';
import { judge } from '../src/contest/judge.ts';
import type { Content } from '../src/entries/folder/content.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { contentFolder } from './folders/content-folder.ts';
import { buildInstant } from './site/build-instant.ts';
import { runCommand } from './terminal/command-line.ts';
import { printProblems } from './terminal/print-problems.ts';
import { ruledFile, writeWhole } from './terminal/ruled-file.ts';
import { type Asked, askedFor, options, whoDecides } from './terminal/ruling-asked.ts';
import { decisionFor } from './terminal/ruling-decision.ts';
import { remarksOn } from './terminal/ruling-remarks.ts';
import { CannotRule, type Subject, subjectOf } from './terminal/ruling-subject.ts';
import { effectText } from './terminal/ruling-text.ts';

const help = `npm run ruling -- <challenge>/<entry> <flight> accept|refuse|void --by HANDLE [options]
npm run ruling -- <challenge>/<entry> inspect --by HANDLE [--span …] [--wing-area …] [--airframe …] [--rubber …] [--balance …]
npm run ruling -- <challenge>/<entry> disqualify|reinstate --by HANDLE --reason TEXT

Writes a decision into rulings/<challenge>/<entry>.md, sealed, and says what it brings about. A flight ruled before keeps its
earlier verdict on record; a disqualification that is lifted is kept in words below the fields. Everything else in the file
stays as it is written.

  --by HANDLE        who decides, or who measured
  --reason TEXT      why, fit for a public page; refuse, void, disqualify and reinstate ask for one
  --date DAY         the day of the decision (else that of --now or SOURCE_DATE_EPOCH, else today at the challenge's place)
  --time "43.1 s"    accept only: an official time, taken as it is
  --seen A,B         what the evidence showed, such as launch,whole-flight,landing
  --received DAY     when the flight was handed in
  --second HANDLE    who confirmed the decision
  --kept URL         where the evidence is kept
  --content DIR      the content folder (else content)
  --now ISO          the moment to judge for
  --dry-run          writes nothing and prints the file as it would be

Exit code: 0, 1 where nothing can be ruled, 2 for a wrong use.`;

const command = { name: 'ruling', help, options, takes: '<challenge>/<entry> …' } as const;

/** Writes a ruling; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, rest) => {
    const [named = '', ...words] = rest;
    const asked = askedFor(words, values);
    const by = whoDecides(values);
    const folder = contentFolder(values.content, command.name);
    const given = values.now !== undefined || (process.env.SOURCE_DATE_EPOCH ?? '') !== '';
    // A command that writes down a day may ask what day it is; a build never does.
    const now = given ? await buildInstant(values.now, folder, process.env) : new Date().toISOString();
    const content = await readContent(folder);
    try {
      const subject = subjectOf(content, named);
      const date = values.date ?? todayIn(now, subject.challenge.timeZone);
      const decision = decisionFor(subject, asked, values, { by, date });
      const old = subject.isThere ? await readFile(join(folder, subject.file), 'utf8') : '---\n---\n';
      const { text, ruling, next } = ruledFile(content, subject, old, decision);
      if (values['dry-run'])
        process.stdout.write(`Nothing is written. ${subject.file} would be:\n\n${text}\n`);
      else await writeWhole(join(folder, subject.file), text);
      process.stdout.write(`${headline(subject, asked, values['dry-run'])} by ${by}, dated ${date}.\n`);
      process.stdout.write(effect(content, next, subject, asked, todayIn(now, subject.challenge.timeZone)));
      process.stdout.write(remarksOn(subject, asked, ruling));
      if (!values['dry-run']) process.stdout.write(`Written to ${subject.file}.\n`);
      return 0;
    } catch (fault) {
      if (!(fault instanceof CannotRule)) throw fault;
      printProblems(fault.problems, folder, process.stderr);
      process.stderr.write(`${fault.message}\n`);
      return 1;
    }
  });
}

function headline({ entrant }: Subject, asked: Asked, isDryRun: boolean): string {
  const { name } = entrant.contender.entry;
  const is = isDryRun ? 'would be' : 'is';
  if (asked.is === 'flight') return `Flight ${asked.flight} of "${name}" ${is} ruled ${asked.verdict}`;
  return `"${name}" ${is} ${{ inspect: 'inspected', disqualify: 'disqualified', reinstate: 'reinstated' }[asked.is]}`;
}

function effect(
  content: Content,
  next: Content,
  { challenge, entrant }: Subject,
  asked: Asked,
  today: string,
): string {
  const judged = (all: Content) =>
    judge(
      challenge,
      entrantsOf(all, sealFlights)
        .map(({ contender }) => contender)
        .filter(({ entry }) => entry.challenge === challenge.id),
      { now: today, frozen: null },
    );
  const { id, name } = entrant.contender.entry;
  const flight = asked.is === 'flight' ? asked.flight : null;
  return effectText({ entry: id, name, before: judged(content), after: judged(next), flight });
}
