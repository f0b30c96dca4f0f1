import { mkdir, mkdtemp, realpath, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contentFolder } from './folders/content-folder.ts';
import { aligned } from './speed/aligned.ts';
import { type Measured, measuredRun } from './speed/measured-run.ts';
import { writeSyntheticContent } from './speed/synthetic-content.ts';
import { weighedKinds } from './speed/weighed-kinds.ts';
import { runCommand, UsageError } from './terminal/command-line.ts';

const help = `npm run speed -- [--sizes 100,1000,5000] [--bare]
npm run speed -- --weight [--content DIR]

Makes so many entries in a temporary folder and measures \`check\` and \`build\` on them, each in a process of its own,
against a floor in the same run: read the files, split them, render the Markdown, write as many bytes of HTML.

  --sizes LIST  numbers of entries, with commas (default: 100,1000,5000)
  --bare        also builds the same entries as a bare content-collection site, to compare with
  --weight      weighs the pages instead: builds a content folder and prints what a browser fetches for the heaviest page
                of each kind, in kB; texts as gzip sends them, pictures at their widest
  --content DIR the content folder to weigh (default: content)

Ratios and time per entry are of processor time, which other programs on the machine change least; ratios tell more than
seconds all the same.`;

const command = {
  name: 'speed',
  help,
  options: { sizes: 'value', bare: 'flag', weight: 'flag', content: 'value' },
  takes: null,
} as const;

/** The moment the measured site is built for; in the middle of its challenge. */
const now = '2027-06-01T00:00:00Z';

/** Measures and prints a table; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values) => {
    const sizes = (values.sizes ?? '100,1000,5000').split(',').map(Number);
    if (sizes.length === 0 || !sizes.every((size) => Number.isInteger(size) && size > 0 && size <= 100_000))
      throw new UsageError(
        `The option --sizes takes numbers of entries such as 100,1000, but "${values.sizes}" was given.`,
      );
    if (values.content !== undefined && !values.weight)
      throw new UsageError(
        'The option --content goes with --weight: the speed is measured on made-up entries.',
      );
    const folder = await realpath(await mkdtemp(join(tmpdir(), 'last-turn-speed-')));
    try {
      if (values.weight) {
        process.stdout.write(await weigh(contentFolder(values.content, command.name), join(folder, 'site')));
        return 0;
      }
      const runs: Run[] = [];
      for (const size of sizes) runs.push(await measureSize(folder, size, values.bare));
      process.stdout.write(table(runs));
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
    return 0;
  });
}

async function weigh(content: string, out: string): Promise<string> {
  await measuredRun('build', [
    '--content',
    content,
    '--out',
    out,
    '--site',
    'https://site.example/',
    '--now',
    now,
  ]);
  const parts = ['html', 'css', 'script', 'fonts', 'images'] as const;
  const rows = (await weighedKinds(out, '/')).map(({ kind, pages, heaviest, weight }) => [
    kind,
    String(pages),
    ...parts.map((part) => (weight[part] / 1000).toFixed(1)),
    heaviest,
  ]);
  return aligned([['kind of page', 'pages', ...parts, 'heaviest'], ...rows], [0, 7]);
}

interface Run {
  readonly size: number;
  readonly floor: Measured;
  readonly check: Measured;
  readonly build: Measured;
  readonly bare: Measured | null;
}

async function measureSize(parent: string, size: number, withBare: boolean): Promise<Run> {
  process.stderr.write(`${size} entries …\n`);
  const folder = join(parent, String(size));
  const content = join(folder, 'content');
  const out = join(folder, 'dist');
  await mkdir(folder, { recursive: true });
  await writeSyntheticContent(content, size);
  const check = await measuredRun('check', ['--content', content, '--now', now]);
  const build = await measuredRun('build', ['--content', content, '--out', out, '--now', now, '--strict']);
  const page = await stat(join(out, 'entries/measured/model-00000/index.html'));
  const floor = await measuredRun('speed/floor', [content, join(folder, 'floor'), String(page.size)]);
  const bare = withBare ? await measuredRun('speed/bare-site', [content, join(folder, 'bare')]) : null;
  await rm(folder, { recursive: true, force: true });
  return { size, floor, check, build, bare };
}

function table(runs: readonly Run[]): string {
  const rows = [
    ['entries', 'what', 'seconds', 'processor s', 'ratio to floor', 'peak MB', 'ms per added entry'],
  ];
  runs.forEach((run, index) => {
    const before = runs[index - 1];
    for (const what of ['floor', 'bare', 'check', 'build'] as const) {
      const measured = run[what];
      if (measured === null) continue;
      const earlier = before?.[what] ?? null;
      const added =
        earlier === null || before === undefined || run.size === before.size
          ? ''
          : (
              ((measured.processorSeconds - earlier.processorSeconds) * 1000) /
              (run.size - before.size)
            ).toFixed(2);
      rows.push([
        String(run.size),
        what,
        measured.seconds.toFixed(2),
        measured.processorSeconds.toFixed(2),
        (measured.processorSeconds / run.floor.processorSeconds).toFixed(2),
        measured.megabytes.toFixed(0),
        added,
      ]);
    }
    if (run.bare !== null)
      rows.push([
        String(run.size),
        'build / bare',
        '',
        '',
        (run.build.processorSeconds / run.bare.processorSeconds).toFixed(2),
        '',
        '',
      ]);
  });
  return aligned(rows, [1]);
}
