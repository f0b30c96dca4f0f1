import { existsSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { readAlmanac } from '../src/almanac/read-almanac.ts';
import { restore } from '../src/publish/restore.ts';
import { contentFolder } from './folders/content-folder.ts';
import { projectFolder, typedPath } from './folders/project-folder.ts';
import { buildInstant } from './site/build-instant.ts';
import { checkSummary, summaryLine } from './terminal/check-summary.ts';
import { oneOf, runCommand, UsageError } from './terminal/command-line.ts';
import { pathFrom, printProblems } from './terminal/print-problems.ts';
import { problemAnnotation } from './terminal/problem-annotation.ts';

const help = `npm run check -- [paths…] [--content DIR] [--format text|github|json] [--now ISO]

Reads the content folder and reports every problem of every file, with its place and what would be accepted.
With paths, the problems of those files or folders only; the rest is still read, to compare with.

  --content DIR   the content folder (else the one around the first path, else content)
  --format        text for people (the default), github for annotations, json for programs
  --now ISO       the moment to judge for (else SOURCE_DATE_EPOCH, else the content folder's last commit)

Exit code: 0 without errors, 1 with errors, 2 for a wrong use.`;

const command = {
  name: 'check',
  help,
  options: { content: 'value', format: 'value', now: 'value' },
  takes: '[paths…]',
} as const;

/** Checks a content folder; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, rest) => {
    const format = oneOf('format', values.format, ['text', 'github', 'json']);
    const paths = rest.map((path) => typedPath(path, command.name));
    const content = contentFolder(values.content, command.name, paths);
    const within = filter(paths, rest, content);
    const now = await buildInstant(values.now, content, process.env);
    await restore(resolve(projectFolder, 'dist'));
    const almanac = await readAlmanac({ content, now });
    const problems = almanac.problems.filter(({ file }) => within(file));
    const summary = checkSummary(almanac, problems, within);
    const notes = problems.filter(({ severity }) => severity === 'note').length;
    if (format === 'json') process.stdout.write(`${JSON.stringify({ summary, problems }, null, 2)}\n`);
    else if (format === 'github') {
      const pathOf = pathFrom(process.env.GITHUB_WORKSPACE ?? process.cwd(), content);
      process.stdout.write(problems.map((problem) => problemAnnotation(problem, pathOf)).join(''));
      process.stdout.write(`Checked ${summaryLine(summary, notes)}.\n`);
    } else {
      printProblems(problems, content, process.stdout);
      process.stdout.write(`Checked ${summaryLine(summary, notes)}.\n`);
    }
    return summary.errors > 0 ? 1 : 0;
  });
}

/** Tells which files were asked for. Throws a UsageError for a path that is not there or not in the content folder. */
function filter(
  paths: readonly string[],
  typed: readonly string[],
  content: string,
): (file: string) => boolean {
  if (paths.length === 0) return () => true;
  const wanted = paths.map((path, index) => {
    if (!existsSync(path)) throw new UsageError(`There is no file or folder ${typed[index]}.`);
    const inside = relative(content, path).replaceAll('\\', '/');
    if (inside === '..' || inside.startsWith('../'))
      throw new UsageError(
        `${typed[index]} is not in the content folder ${content}; name its own with --content.`,
      );
    return inside;
  });
  return (file) => wanted.some((path) => path === '' || file === path || file.startsWith(`${path}/`));
}
