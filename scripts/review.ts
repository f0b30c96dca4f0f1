import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { assemble } from '../src/almanac/assemble.ts';
import type { HandedIn } from '../src/almanac/review/history.ts';
import { reviewOf } from '../src/almanac/review/review-of.ts';
import type { Side } from '../src/almanac/review/side.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { contentFolder } from './folders/content-folder.ts';
import { digestsOf } from './folders/digests.ts';
import { commitNamed, writeContentAt } from './history/content-at.ts';
import { git } from './history/git.ts';
import { handedInBetween } from './history/handed-in.ts';
import { buildInstant } from './site/build-instant.ts';
import { oneOf, runCommand, UsageError } from './terminal/command-line.ts';
import { reviewJson } from './terminal/review-json.ts';
import { reviewMarkdown } from './terminal/review-markdown.ts';
import { reviewText } from './terminal/review-text.ts';

const help = `npm run review -- [--base REF] [--head REF] [--content DIR] [--author HANDLE] [--now ISO] [--format text|markdown|json]
npm run review -- --base-content DIR [--content DIR] …

What a change of the content does: what was written and how it was understood, problems, figures and places before
and after, and what a person should look at before it is taken over. It accuses nobody, writes nothing, and runs nothing of
the content it reads.

  --base REF          compare with the commit where the change left this branch or commit (else the last commit)
  --head REF          the change as committed there (else the content folder as it lies on the disk)
  --base-content DIR  compare with this folder instead; no history is looked at, and git is not asked for anything
  --content DIR       the content folder (else content)
  --author HANDLE     the builder who hands it in, where that is known
  --now ISO           the moment to judge both for (else SOURCE_DATE_EPOCH, else the content folder's last commit)
  --format            text for a terminal (the default), markdown for a summary of at most 60 kB, json for programs

Exit code: 0 whatever it finds, for mistakes are \`check\`'s to report; 2 for a wrong use.`;

const command = {
  name: 'review',
  help,
  options: {
    base: 'value',
    head: 'value',
    'base-content': 'value',
    content: 'value',
    author: 'value',
    now: 'value',
    format: 'value',
  },
  takes: null,
} as const;

/** Where the two sides lie on the disk, and what the history tells of the way between them. */
interface Found {
  readonly before: string;
  readonly after: string;
  readonly handedIn: Omit<HandedIn, 'author'>;
}

const noHistory = { on: null, files: null, byOthers: [], outside: [] };

/** Prints what a change of the content folder does; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values) => {
    const format = oneOf('format', values.format, ['text', 'markdown', 'json']);
    const content = contentFolder(values.content, command.name);
    const { base, head, 'base-content': baseContent } = values;
    if (baseContent !== undefined && (base !== undefined || head !== undefined))
      throw new UsageError(
        '--base-content compares two folders, and --base and --head two commits: choose one.',
      );
    const now = await buildInstant(values.now, content, process.env);
    const room = await mkdtemp(join(tmpdir(), 'last-turn-review-'));
    try {
      const found =
        baseContent === undefined
          ? await fromHistory(content, base, head, room)
          : { before: contentFolder(baseContent, command.name), after: content, handedIn: noHistory };
      const sides = { before: await sideOf(found.before, now), after: await sideOf(found.after, now) };
      const review = reviewOf(sides, { ...found.handedIn, author: values.author ?? null });
      const print = { text: reviewText, markdown: reviewMarkdown, json: reviewJson }[format];
      process.stdout.write(print(review));
    } finally {
      await rm(room, { recursive: true, force: true });
    }
    return 0;
  });
}

async function sideOf(folder: string, now: string): Promise<Side> {
  const content = await readContent(folder);
  return {
    content,
    almanac: assemble(content, now, sealFlights),
    digests: await digestsOf(folder, content.files),
  };
}

/** The content as of two commits, or of one and the disk; commits are written into folders of `room`. */
async function fromHistory(
  content: string,
  base: string | undefined,
  head: string | undefined,
  room: string,
): Promise<Found> {
  const headCommit = await named(content, head ?? 'HEAD');
  const baseCommit = base === undefined ? headCommit : await named(content, base);
  const fork = (await git(content, 'merge-base', baseCommit, headCommit))?.trim() ?? baseCommit;
  const [before, after] = [join(room, 'before'), join(room, 'after')];
  await Promise.all([mkdir(before), mkdir(after)]);
  await writeContentAt(content, fork, before);
  if (head !== undefined) await writeContentAt(content, headCommit, after);
  return {
    before,
    after: head === undefined ? content : after,
    handedIn: await handedInBetween(content, fork, headCommit),
  };
}

async function named(content: string, name: string): Promise<string> {
  const commit = await commitNamed(content, name);
  if (commit !== null) return commit;
  throw new UsageError(
    `${content} is in no git repository with a commit "${name}". Name another with --base or --head, or compare two folders with --base-content.`,
  );
}
