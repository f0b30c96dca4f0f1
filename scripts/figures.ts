import { statSync } from 'node:fs';
import { relative } from 'node:path';
import type { Almanac, EntryRecord } from '../src/almanac/almanac.ts';
import { readAlmanac } from '../src/almanac/read-almanac.ts';
import { contentFolder } from './folders/content-folder.ts';
import { typedPath } from './folders/project-folder.ts';
import { oneOf, runCommand, UsageError } from './terminal/command-line.ts';
import { figuresJson } from './terminal/figures-json.ts';
import { figuresText } from './terminal/figures-text.ts';
import { printProblems } from './terminal/print-problems.ts';

const help = `npm run figures -- <entry.md> [--content DIR] [--format text|json]

Every figure of one entry, with its standard uncertainty, what it rests on, and the assumptions used.

  --content DIR  the content folder (default: the one the entry is in)
  --format       text for people (the default), json for programs

Exit code: 0, 1 where the entry cannot be read, 2 for a wrong use.`;

const command = {
  name: 'figures',
  help,
  options: { content: 'value', format: 'value' },
  takes: '<entry.md>',
} as const;

/** No figure depends on the moment it is asked for; the states of challenges, which do, are not shown. */
const anyMoment = '2000-01-01T00:00:00Z';

/** Prints the figures of one entry; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, rest) => {
    const format = oneOf('format', values.format, ['text', 'json']);
    const [typed, more] = rest;
    if (typed === undefined || more !== undefined)
      throw new UsageError(
        '`figures` takes one entry, such as content/entries/<challenge>/<entry>/entry.md.',
      );
    const path = typedPath(typed, command.name);
    const found = statSync(path, { throwIfNoEntry: false });
    if (found === undefined) throw new UsageError(`There is no file or folder ${typed}.`);
    const content = contentFolder(values.content, command.name, [path]);
    const inside = relative(content, path)
      .replaceAll('\\', '/')
      .replace(/\/entry\.md$/, '');
    const [, challenge, id] = /^entries\/([^/]+)\/([^/]+)$/.exec(inside) ?? [];
    if (challenge === undefined || id === undefined)
      throw new UsageError(
        `${typed} is no entry: entries stand at entries/<challenge>/<entry>/entry.md in the content folder ${content}.`,
      );
    const almanac = await readAlmanac({ content, now: anyMoment });
    const record = recordOf(almanac, challenge, id);
    if (record === null) {
      printProblems(
        almanac.problems.filter(
          ({ file }) => file.startsWith(`${inside}/`) || file === `challenges/${challenge}.md`,
        ),
        content,
        process.stderr,
      );
      process.stderr.write(`The entry ${challenge}/${id} cannot be read, so it has no figures.\n`);
      return 1;
    }
    process.stdout.write(format === 'json' ? figuresJson(record) : figuresText(record));
    return 0;
  });
}

function recordOf(almanac: Almanac, challenge: string, entry: string): EntryRecord | null {
  const record = almanac.challenges.find((one) => one.challenge.id === challenge);
  return record?.entries.find((one) => one.entry.id === entry) ?? null;
}
