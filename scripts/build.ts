import { readFile, realpath, rm, writeFile } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { join, resolve, sep } from 'node:path';
import type { Almanac } from '../src/almanac/almanac.ts';
import { readAlmanac } from '../src/almanac/read-almanac.ts';
import { writeCards } from '../src/cards/write-cards.ts';
import { addressesFile, addressesOf, addressesText, readAddresses } from '../src/publish/addresses.ts';
import { type GateFault, gate } from '../src/publish/gate.ts';
import { keptAddresses, writeKeptAddresses } from '../src/publish/keep-addresses.ts';
import { restore } from '../src/publish/restore.ts';
import { filesBelow, lastAddresses, refusalToBuildInto } from '../src/publish/site-folder.ts';
import { writeSitemap } from '../src/publish/sitemap.ts';
import { type SwapEffects, swap } from '../src/publish/swap.ts';
import { preparePhotos, withoutPhotos, writePhotos } from '../src/publish/write-photos.ts';
import { contentFolder } from './folders/content-folder.ts';
import { cacheFolder, projectFolder, typedPath } from './folders/project-folder.ts';
import { buildInstant } from './site/build-instant.ts';
import { renderingFolder, renderSite } from './site/render-site.ts';
import { siteAddress } from './site/site-address.ts';
import { counted } from './terminal/check-summary.ts';
import { runCommand, UsageError } from './terminal/command-line.ts';
import { printProblems } from './terminal/print-problems.ts';
import { printable } from './terminal/printable.ts';

const help = `npm run build -- [--content DIR] [--out DIR] [--site URL] [--strict] [--now ISO] [--previous FILE]

Checks the content folder, builds the site beside the last one, looks at every page, and only then puts the new site
in its place. An entry that cannot be read is left out and listed; the rest is published.

  --content DIR    the content folder (default: content)
  --out DIR        where the site goes (default: dist)
  --site URL       the web address it will have; its path is the base path (default: the address in site.md)
  --strict         any error in the content stops the build; the last site stays
  --now ISO        the moment to build for (else SOURCE_DATE_EPOCH, else the content folder's last commit)
  --previous FILE  the addresses.json of the site this one replaces (default: the one in --out)

Exit code: 0 built, 1 not built and the last site untouched, 2 for a wrong use.`;

const command = {
  name: 'build',
  help,
  options: {
    content: 'value',
    out: 'value',
    site: 'value',
    strict: 'flag',
    now: 'value',
    previous: 'value',
  },
  takes: null,
} as const;

/**
 * Builds the site; gives the exit code.
 *
 * @param effects what the swap does beside moving folders; nothing, unless a test stops it at a step
 */
export function main(argv: readonly string[], effects: SwapEffects = { reached: () => {} }): Promise<number> {
  return runCommand(command, argv, async (values) => {
    const content = contentFolder(values.content, command.name);
    const out = values.out === undefined ? join(projectFolder, 'dist') : typedPath(values.out, command.name);
    refuseOverlap(out, content);
    const now = await buildInstant(values.now, content, process.env);
    await restore(out);
    const refusal = await refusalToBuildInto(out);
    if (refusal !== null) throw new UsageError(refusal);
    const previous = await previousAddresses(values.previous, out);

    const read = await readAlmanac({ content, now });
    const address = siteAddress(values.site, read.site.address);
    const errors = read.problems.filter(({ severity }) => severity === 'error');
    printProblems(
      read.problems.filter(({ severity }) => severity !== 'note'),
      content,
      process.stderr,
    );
    const missing = missingForAnySite(read);
    if (missing !== null) {
      process.stderr.write(`Not built: ${missing}\n`);
      return 1;
    }
    if (values.strict && errors.length > 0) {
      process.stderr.write(
        `Not built: ${counted(errors.length, 'error', 'errors')}, and --strict allows none.\n`,
      );
      return 1;
    }

    const photos = await preparePhotos(read, { content, cache: join(cacheFolder(), 'photos') });
    for (const [file, why] of photos.failed)
      process.stderr.write(`${printable(`The photo ${file} is left out: it cannot be decoded (${why})`)}.\n`);
    const almanac = withoutPhotos(read, photos.failed);
    const folder = await renderingFolder();
    try {
      const site = await renderSite(almanac, address, folder);
      await writePhotos(photos, site);
      await writeCards(almanac, join(cacheFolder(), 'cards'), site);
      await writeFile(join(site, '.nojekyll'), '');
      const built = await filesBelow(site);
      const kept = keptAddresses(almanac, built, previous);
      await writeKeptAddresses(site, kept);
      const files = [...built, ...kept.map(({ to }) => to)];
      await writeSitemap(site, files, address);
      const addresses = addressesOf(files);
      await writeFile(join(site, addressesFile), addressesText(addresses));
      const faults = await gate({
        folder: site,
        files: await filesBelow(site),
        almanac,
        base: address.base,
        previous,
        privatePaths: await privatePaths(content, out),
        contentFiles: await filesBelow(content, new Set(['.git', 'node_modules'])),
      });
      if (faults.length > 0) {
        printFaults(faults, out);
        return 1;
      }
      await swap(site, out, effects);
      printSummary(almanac, addresses.length, out);
      return 0;
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  });
}

/** What a site cannot do without, even where a bad entry is left out: why it is not there, or null. */
function missingForAnySite({ site, challenges, files }: Almanac): string | null {
  if (!files.some(({ file, fate }) => file === 'site.md' && fate === 'published'))
    return 'site.md cannot be read, and without it nobody knows the address of the site.';
  const unread = files.filter(({ file, fate }) => file.startsWith('challenges/') && fate === 'left-out');
  const featured = `challenges/${site.featured}.md`;
  if (unread.some(({ file }) => file === featured))
    return `${featured} cannot be read, and it is the challenge of the front page.`;
  if (challenges.length === 0 && unread.length > 0)
    return `no challenge can be read: ${unread.map(({ file }) => file).join(', ')}.`;
  return null;
}

function refuseOverlap(out: string, content: string): void {
  const inside = (inner: string, outer: string) => inner === outer || inner.startsWith(join(outer, sep));
  if (inside(content, out) || inside(projectFolder, out))
    throw new UsageError(`The site cannot be built into ${out}: that folder holds what it is built from.`);
  if (inside(out, content))
    throw new UsageError(
      `The site cannot be built into ${out}, inside the content folder. Choose another --out.`,
    );
}

async function previousAddresses(file: string | undefined, out: string): Promise<string[]> {
  if (file === undefined) return readAddresses((await lastAddresses(out)) ?? '') ?? [];
  const path = typedPath(file, command.name);
  const text = await readFile(path, 'utf8').catch(() => null);
  const addresses = text === null ? null : readAddresses(text);
  if (addresses === null)
    throw new UsageError(
      `${path} is no list of addresses. --previous takes the addresses.json of a built site.`,
    );
  return addresses;
}

/** Paths of this machine that no page may show; short ones such as /srv are too likely to be a word of the site. */
async function privatePaths(content: string, out: string): Promise<string[]> {
  const paths = [projectFolder, content, out, homedir(), resolve(tmpdir())];
  const real = await Promise.all(paths.map((path) => realpath(path).catch(() => path)));
  return [...new Set([...paths, ...real])].filter((path) => path.split(/[\\/]/).length > 2);
}

const shownFaults = 30;

function printFaults(faults: readonly GateFault[], out: string): void {
  for (const { message } of faults.slice(0, shownFaults)) process.stderr.write(`${printable(message)}\n`);
  if (faults.length > shownFaults) process.stderr.write(`… and ${faults.length - shownFaults} more.\n`);
  if (faults.some(({ code }) => code === 'address-lost'))
    process.stderr.write(
      `If ${out} holds the site of other content, choose another --out or remove it first.\n`,
    );
  process.stderr.write(
    `Not built: the new site has ${counted(faults.length, 'fault', 'faults')}; the last one, if any, stays as it was.\n`,
  );
}

function printSummary(almanac: Almanac, addresses: number, out: string): void {
  const entries = almanac.challenges.reduce((sum, challenge) => sum + challenge.entries.length, 0);
  const challenges = counted(almanac.challenges.length, 'challenge', 'challenges');
  process.stdout.write(
    `Built ${counted(entries, 'entry', 'entries')} of ${challenges}, ${counted(addresses, 'address', 'addresses')}, in ${out}\n`,
  );
  for (const line of leftOutLines(almanac)) process.stdout.write(`${printable(line)}\n`);
}

/** What was left out, entries last: that line is the one to look for. */
function leftOutLines({ leftOut, files }: Almanac): string[] {
  const entries = leftOut.map(({ challenge, entry }) => `${challenge}/${entry}`);
  const told = new Set(entries.map((entry) => `entries/${entry}/entry.md`));
  const ofNoAddress = (file: string) => file.endsWith('/entry.md') && !told.has(file);
  const others = files.filter(
    ({ file, fate }) => fate === 'left-out' && (!file.startsWith('entries/') || ofNoAddress(file)),
  );
  return [
    ...(others.length === 0
      ? []
      : [
          `left out: ${counted(others.length, 'file', 'files')}: ${others.map(({ file }) => file).join(', ')}`,
        ]),
    ...(entries.length === 0
      ? []
      : [`left out: ${counted(entries.length, 'entry', 'entries')}: ${entries.join(', ')}`]),
  ];
}
