import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, sep } from 'node:path';
import { todayIn } from '../../src/almanac/today.ts';
import { projectFolder, typedPath } from '../folders/project-folder.ts';
import { buildInstant } from '../site/build-instant.ts';
import { runCommand, UsageError } from '../terminal/command-line.ts';
import { printable } from '../terminal/printable.ts';
import { Left, terminalAsker } from './asking.ts';
import { askClub, askGenerator } from './site/ask-club.ts';
import type { Club } from './site/club.ts';
import { clubFrom, siteOptions } from './site/club-from.ts';
import { generatorSource } from './site/generator-source.ts';
import { seededFiles } from './site/seeded-files.ts';

const help = `npm run new -- site <folder> [options]

Makes the folder of a club's own site: the club, an announced challenge, pages on measuring, safety, privacy and running a season, and
what checks entries and publishes the site, with this version of the generator. Nothing is written into a folder that has something in
it. At a terminal it asks for what is missing; what nobody knows yet stands in the files as remarks.

  --title TEXT       what the site is called (else the folder's name)
  --club TEXT        who runs it
  --repository URL   where the folder will live
  --kind WORD        github, gitlab or forgejo: the software of that host (else by its address)
  --address URL      where the site will be published
  --send-to MAIL     where a builder without an account sends a file
  --licence TEXT     of what people hand in, such as CC BY 4.0
  --challenge NAME   the challenge's name in addresses (else from title and year)
  --opens DAY        its first day of flying (else the first of April)
  --closes DAY       its last (else half a year later)
  --generator URL    the repository of the generator (else where this copy comes from)
  --now ISO          the moment it is (else what the clock says)
  --dry-run          writes nothing and lists the files

Exit code: 0, 2 for a wrong use.`;

const command = {
  name: 'new',
  kind: 'site',
  help,
  options: { ...siteOptions, generator: 'value', now: 'value', 'dry-run': 'flag' },
  takes: '<folder>',
} as const;

/** Makes the folder of a club's own site; gives the exit code. */
export function newSite(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, [named, more]) => {
    if (named === undefined || more !== undefined)
      throw new UsageError('`new site` takes one folder, such as ../our-club.');
    const folder = typedPath(named, command.name);
    await refuseTaken(folder);
    const isSaid = values.now !== undefined || (process.env.SOURCE_DATE_EPOCH ?? '') !== '';
    // A command that writes down a day may ask what day it is; a build never does.
    const now = isSaid
      ? await buildInstant(values.now, dirname(folder), process.env)
      : new Date().toISOString();
    const known = {
      folder: basename(folder),
      today: todayIn(now, null),
      generator: await generatorSource(values.generator),
    };
    try {
      const asker = values['dry-run'] ? null : await terminalAsker();
      const told = asker === null ? values : await askClub(values, known, asker);
      const isFound = known.generator.address !== null || asker === null;
      const typed = isFound ? null : await askGenerator(asker);
      const generator = typed === null ? known.generator : await generatorSource(typed);
      const club = clubFrom(told, { ...known, generator });
      const files = await seededFiles(club);
      if (!values['dry-run']) await writeAll(folder, files);
      process.stdout.write(outcome(folder, club, [...files.keys()], values['dry-run']));
      return 0;
    } catch (error) {
      if (!(error instanceof Left)) throw error;
      process.stderr.write('Nothing is written.\n');
      return 2;
    }
  });
}

/** Throws a UsageError where the folder may not be written into. */
async function refuseTaken(folder: string): Promise<void> {
  if (folder === projectFolder || folder.startsWith(projectFolder + sep))
    throw new UsageError(
      `${printable(folder)} lies inside the generator's own folder. Choose a place beside it, such as ../our-club.`,
    );
  const found = await readdir(folder).catch((error: NodeJS.ErrnoException) => error.code ?? 'unknown');
  if (found === 'ENOENT' || (Array.isArray(found) && found.length === 0)) return;
  throw new UsageError(
    Array.isArray(found)
      ? `${printable(folder)} has something in it already, and nothing is written over. Choose a new folder.`
      : `${printable(folder)} cannot be used as a folder (${found}). Choose another.`,
  );
}

async function writeAll(folder: string, files: ReadonlyMap<string, string>): Promise<void> {
  for (const [file, text] of files) {
    const path = join(folder, file);
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text, { flag: 'wx' });
  }
}

function outcome(folder: string, club: Club, files: readonly string[], isDryRun: boolean): string {
  const { season, generator } = club;
  const unsaid = [
    ...(generator.address === null ? ['where the generator lives: `address=` in generator.sh'] : []),
    ...(club.address === null ? ['where the site is published: `address` in content/site.md'] : []),
    ...(club.repository === null ? ['where the folder lives: `repository` in content/site.md'] : []),
    ...(club.sendTo === null ? ['how the organisers are reached: content/pages/privacy.md'] : []),
  ];
  return [
    ...(isDryRun
      ? [`Nothing is written. These would be, in ${folder}:`, ...files]
      : [`Written to ${folder}.`]),
    `The challenge ${club.challenge} opens on ${season.opens} and closes on ${season.closes}.`,
    ...(unsaid.length === 0 ? [] : ['Nobody has said yet', ...unsaid.map((each) => `  ${each}`)]),
    'Next: read README.md there; `git init --initial-branch main`, add everything, commit, and follow PUBLISHING.md.',
  ]
    .map((line) => `${printable(line)}\n`)
    .join('');
}
