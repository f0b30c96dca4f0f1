import { readdir, readFile } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { Change } from '../../../src/entries/write/after.ts';
import { rewrite } from '../../../src/entries/write/rewrite.ts';
import type { Club } from './club.ts';

/** What every new club's folder begins with: `common`, and a folder for each forge. */
export const seeds = join(import.meta.dirname, 'seeds');

/** The files of a club's folder: path with `/`, and text. */
export async function seededFiles(club: Club): Promise<ReadonlyMap<string, string>> {
  const files = new Map([...(await filesOf('common')), ...(await filesOf(club.forge))]);
  const made = new Map<string, string>();
  for (const [file, text] of files) {
    if (file === siteFile) made.set(file, siteText(text, club));
    else if (file === seasonFile)
      made.set(`content/challenges/${club.challenge}.md`, challengeText(text, club));
    else if (file === 'generator.sh') made.set(file, pinned(text, club));
    else made.set(file, filledIn(text, club));
  }
  return made;
}

const siteFile = 'content/site.md';
const seasonFile = 'content/challenges/season.md';

async function filesOf(folder: string): Promise<[string, string][]> {
  const top = join(seeds, folder);
  const items = await readdir(top, { recursive: true, withFileTypes: true });
  const paths = items.filter((item) => item.isFile()).map((item) => join(item.parentPath, item.name));
  return Promise.all(
    paths
      .sort()
      .map(
        async (path): Promise<[string, string]> => [
          relative(top, path).replaceAll('\\', '/'),
          await readFile(path, 'utf8'),
        ],
      ),
  );
}

/** What is not known stays as a remark: there to be filled in. */
function siteText(
  seed: string,
  { title, club, address, forge, repository, sendTo, licence, challenge }: Club,
) {
  const known = {
    club,
    address,
    repository: repository === null ? null : { kind: forge, url: repository, branch: 'main' },
    'send-to': sendTo,
    licence,
  };
  const changes = Object.entries({ title, ...known, featured: challenge }).flatMap(
    ([key, value]): Change[] => (value === null ? [] : [{ do: 'set', at: [key], value }]),
  );
  const unknown = Object.entries(known).flatMap(([key, value]) => (value === null ? [key] : []));
  return unknown.reduce(
    (text, key) => text.replace(new RegExp(`^${key}: `, 'm'), `# ${key}: `),
    changed(siteFile, seed, changes),
  );
}

function challengeText(seed: string, { challengeTitle, season }: Club) {
  const { opens, closes, reportBy, final } = season;
  const days = { title: challengeTitle, opens, closes, 'report-by': reportBy, final };
  return changed(
    seasonFile,
    seed,
    Object.entries(days).map(([key, value]) => ({ do: 'set', at: [key], value })),
  );
}

function changed(file: string, seed: string, changes: readonly Change[]): string {
  const rewritten = rewrite(file, seed, changes);
  if (!rewritten.ok) throw new Error(rewritten.why);
  return rewritten.text;
}

function pinned(seed: string, { generator }: Club): string {
  return seed
    .replace(/^version=.*$/m, `version=${generator.version}`)
    .replace(/^address=.*$/m, `address=${generator.address ?? ''}`);
}

/** Puts in what stands in double braces; a name that nobody knows is a mistake in the seed, and thrown. */
function filledIn(seed: string, club: Club): string {
  const { title, sendTo, challenge, season, today } = club;
  const said: Readonly<Record<string, string>> = {
    title: asMarkdown(title),
    club: asMarkdown(club.club ?? `The organisers of ${title}`),
    contact:
      sendTo === null
        ? '*The organisers write here how they can be reached.*'
        : `Write to [${asMarkdown(sendTo)}](mailto:${sendTo}).`,
    challenge,
    opens: season.opens,
    today,
  };
  return seed.replaceAll(/\{\{(\w+)\}\}/g, (_, name: string) => {
    const found = said[name];
    if (found === undefined) throw new Error(`Nothing is known to stand for {{${name}}}.`);
    return found;
  });
}

/** A text that Markdown shows as it is. */
function asMarkdown(text: string): string {
  return text.replaceAll(/[\\`*_{}[\]<>#|~&]/g, '\\$&');
}
