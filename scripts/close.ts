import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { entrantsOf } from '../src/almanac/entrants.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { todayIn } from '../src/almanac/today.ts';
import { mayCloseFrom, waitingFlights } from '../src/contest/frozen/closing.ts';
import { freeze } from '../src/contest/frozen/freeze.ts';
import type { FrozenResult } from '../src/contest/frozen/frozen.ts';
import { judge } from '../src/contest/judge.ts';
import type { Content } from '../src/entries/folder/content.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { didYouMean } from '../src/entries/problems/did-you-mean.ts';
import type { Problem } from '../src/entries/problems/problem.ts';
import type { Challenge } from '../src/model/challenge.ts';
import { frozenFile } from '../src/publish/frozen-file.ts';
import { contentFolder } from './folders/content-folder.ts';
import { generatorVersion } from './folders/generator-version.ts';
import { buildInstant } from './site/build-instant.ts';
import { runCommand, UsageError } from './terminal/command-line.ts';
import { printProblems } from './terminal/print-problems.ts';
import { printable } from './terminal/printable.ts';

const help = `npm run close -- <challenge> [--content DIR] [--now ISO] [--leave-provisional] [--without ENTRY,ENTRY] [--dry-run]

Freezes the result of a challenge for good in results/<challenge>.json: places, times, statuses, records and the facts
they rest on. Nothing ranks it anew afterwards.

  --leave-provisional  freeze although flights still wait for a ruling; they stay provisional for ever
  --without A,B        freeze although these entries cannot be read; they will have no part in the result
  --content DIR        the content folder (else content)
  --now ISO            the moment to judge for (else SOURCE_DATE_EPOCH, else the content folder's last commit)
  --dry-run            writes nothing and prints the result as it would be

Exit code: 0, 1 where it cannot be frozen yet, 2 for a wrong use.`;

const command = {
  name: 'close',
  help,
  options: {
    content: 'value',
    now: 'value',
    'leave-provisional': 'flag',
    without: 'value',
    'dry-run': 'flag',
  },
  takes: '<challenge>',
} as const;

/** Freezes the result of a challenge; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, rest) => {
    const [id, more] = rest;
    if (id === undefined || more !== undefined)
      throw new UsageError('`close` takes one challenge, such as slow-thread-2026.');
    const folder = contentFolder(values.content, command.name);
    const now = await buildInstant(values.now, folder, process.env);
    const content = await readContent(folder);
    const without = values.without?.split(',').map((name) => name.trim()) ?? [];
    const { challenge, problems } = readable(content, id, without);
    if (challenge === null) {
      printProblems(problems, folder, process.stderr);
      process.stderr.write(
        `The result of ${id} is not frozen: what stands above would be missing from it for good. Mend it first, ` +
          'or name the entries that are to have no part in it with --without.\n',
      );
      return 1;
    }
    const today = todayIn(now, challenge.timeZone);
    const contenders = entrantsOf(content, sealFlights)
      .map(({ contender }) => contender)
      .filter(({ entry }) => entry.challenge === id);
    const result = judge(challenge, contenders, { now: today, frozen: null });
    const from = mayCloseFrom(challenge);
    if (today < from) {
      process.stderr.write(
        `The result of ${id} can be frozen from ${from} on, and it is ${today}. ` +
          'If that day has come, say the moment with --now; if the dates are wrong, change them in the challenge, with an amendment.\n',
      );
      return 1;
    }
    const waiting = waitingFlights(result);
    if (waiting.length > 0 && !values['leave-provisional']) {
      process.stderr.write(
        `${waiting.length === 1 ? 'One flight waits' : `${waiting.length} flights wait`} for a ruling:\n`,
      );
      for (const { entry, flight } of waiting)
        process.stderr.write(
          `  ${entry} flight ${flight.number}, ${flight.official.seconds} s${flight.reason === null ? '' : `: ${printable(flight.reason)}`}\n`,
        );
      process.stderr.write(
        `Rule on them first (\`npm run ruling -- ${id}/<entry> <flight> accept|refuse|void\`), ` +
          'or freeze the result without them with --leave-provisional.\n',
      );
      return 1;
    }
    const frozen = freeze(challenge, result, contenders, {
      generator: await generatorVersion(),
      closed: today,
    });
    if (values['dry-run']) {
      process.stdout.write(frozenFile(frozen));
      return 0;
    }
    await write(join(folder, 'results', `${id}.json`), frozenFile(frozen));
    process.stdout.write(closedText(frozen));
    return 0;
  });
}

/**
 * The challenge, where it and everything that belongs to its result can be read; else null and what stands in the way.
 * Throws a UsageError for a name that is no challenge, a result frozen already, and an exception that is none.
 */
function readable(
  content: Content,
  id: string,
  without: readonly string[],
): { readonly challenge: Challenge | null; readonly problems: readonly Problem[] } {
  const known = content.challenges.map(({ value }) => value.id);
  const there = new Set(content.files.map(({ file }) => file));
  if (!there.has(`challenges/${id}.md`)) {
    const near = didYouMean(id, known);
    throw new UsageError(
      `There is no challenge "${id}"; there is ${known.join(', ') || 'none'}.${near === null ? '' : ` Did you mean "${near}"?`}`,
    );
  }
  if (there.has(`results/${id}.json`))
    throw new UsageError(
      `The result of ${id} is frozen already, in results/${id}.json: nothing freezes it a second time.`,
    );
  const leftOut = content.leftOut.filter(({ challenge }) => challenge === id).map(({ entry }) => entry);
  const stranger = without.find((entry) => !leftOut.includes(entry));
  if (stranger !== undefined)
    throw new UsageError(
      `--without names "${stranger}", which can be read or is not there; entries that cannot be read: ${leftOut.join(', ') || 'none'}.`,
    );
  const spared = without.flatMap((entry) => [`entries/${id}/${entry}/`, `rulings/${id}/${entry}.md`]);
  const counts = (file: string) =>
    (file === `challenges/${id}.md` ||
      file.startsWith(`entries/${id}/`) ||
      file.startsWith(`rulings/${id}/`)) &&
    !spared.some((start) => file.startsWith(start));
  const lost = new Set(
    content.files
      .filter(({ file, fate }) => fate === 'left-out' && /\.md$/.test(file) && counts(file))
      .map(({ file }) => file),
  );
  const challenge = content.challenges.find(({ value }) => value.id === id)?.value ?? null;
  const problems = content.problems.filter(({ file, severity }) => severity === 'error' && lost.has(file));
  return { challenge: lost.size === 0 ? challenge : null, problems };
}

/** Never over another file: a result is frozen once. */
async function write(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, text, { flag: 'wx' });
}

function closedText(frozen: FrozenResult): string {
  const { challenge, standings, closed, claims } = frozen;
  const names = new Map(frozen.entries.map(({ id, name }) => [id, printable(name)]));
  const first = standings
    .slice(0, 3)
    .map(({ place, entry, score }) => `  ${place}. ${names.get(entry) ?? entry}, ${score} s\n`);
  return [
    `The result of ${challenge.title} is frozen as of ${closed}, in results/${challenge.id}.json: ` +
      `${standings.length} placed, ${frozen.entries.length} entered.\n`,
    ...first,
    ...(claims.length > 0 ? [`  ${claims.length} with flights left provisional.\n`] : []),
    'Commit that file: nothing ranks the challenge anew from now on.\n',
  ].join('');
}
