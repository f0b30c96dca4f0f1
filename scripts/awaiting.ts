import { assemble } from '../src/almanac/assemble.ts';
import { forOrganiser } from '../src/almanac/awaiting/for-organiser.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { didYouMean } from '../src/entries/problems/did-you-mean.ts';
import { contentFolder } from './folders/content-folder.ts';
import { pastOf } from './history/past-of.ts';
import { buildInstant } from './site/build-instant.ts';
import { awaitingText, rulingCommand } from './terminal/awaiting-text.ts';
import { oneOf, runCommand, UsageError } from './terminal/command-line.ts';
import { printable } from './terminal/printable.ts';

const help = `npm run awaiting -- [<challenge>] [--content DIR] [--now ISO] [--format text|json]

For the organiser: the flights that wait and for what, each with the command that rules on it; rulings whose flight changed
since; what is worth another look; handles and rules that the history in git raises a question about; the dates to come.
Nothing here says that anybody did something wrong.

  --content DIR   the content folder (else content)
  --format        text for people (the default), json for programs
  --now ISO       the moment to look at (else SOURCE_DATE_EPOCH, else the content folder's last commit)

Nothing is written. Exit code: 0, 2 for a wrong use.`;

const command = {
  name: 'awaiting',
  help,
  options: { content: 'value', format: 'value', now: 'value' },
  takes: '[<challenge>]',
} as const;

/** Prints what awaits the organiser; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, [asked, more]) => {
    if (more !== undefined) throw new UsageError('`awaiting` takes one challenge, such as slow-thread-2026.');
    const format = oneOf('format', values.format, ['text', 'json']);
    const folder = contentFolder(values.content, command.name);
    const now = await buildInstant(values.now, folder, process.env);
    const content = await readContent(folder);
    const ids = content.challenges.map(({ value }) => value.id);
    if (asked !== undefined && !ids.includes(asked)) throw new UsageError(unknown(asked, ids));
    const { past, notLookedAt } = await pastOf(folder, asked === undefined ? ids : [asked]);
    const all = forOrganiser(content, assemble(content, now, sealFlights), sealFlights, past);
    const shown = all.filter(({ challenge }) => asked === undefined || challenge === asked);
    const option = values.content === undefined ? '' : ` --content ${shellWord(values.content)}`;
    if (format === 'json') {
      const challenges = shown.map((one) => ({
        ...one,
        commands: one.awaiting.flatMap(({ entry, flights }) =>
          flights.map(({ number }) => rulingCommand(one, entry, number, option)),
        ),
      }));
      process.stdout.write(`${JSON.stringify({ format: 1, now, challenges, notLookedAt }, null, 2)}\n`);
    } else {
      const parts = shown.map((one) => awaitingText(one, option));
      process.stdout.write([...parts, ...notLookedAt.map((line) => `${line}\n`)].join('\n'));
    }
    return 0;
  });
}

function unknown(asked: string, ids: readonly string[]): string {
  const near = didYouMean(asked, ids);
  const hint = near === null ? '' : ` Did you mean "${near}"?`;
  return `There is no challenge "${printable(asked)}" that can be read; there is ${ids.join(', ') || 'none'}.${hint}`;
}

/** A path as a shell takes it for one word. */
function shellWord(text: string): string {
  return /^[\w./-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;
}
