import { byPlace, type Problem } from '../problems/problem.ts';
import { costOf } from '../problems/problem-codes.ts';
import { folderOf } from './attachments.ts';
import { classifyPath } from './classify-path.ts';
import type { Content, FileAccount, Understood } from './content.ts';
import type { Listing } from './listing.ts';
import { testLogsNamed } from './references.ts';

type Everything = Omit<Content, 'leftOut' | 'problems' | 'files'>;

/**
 * Leaves out what has an error that costs its file, and what stands on such a file (a challenge whose frozen result cannot
 * be read, for it must never be ranked anew; an entry of a challenge that is left out; a ruling of such an entry), and
 * says of every file what became of it.
 */
export function account(listing: Listing, everything: Everything, problems: readonly Problem[]): Content {
  const reasons = new Map<string, string>();
  for (const { file, severity, code } of problems)
    if (severity === 'error' && costOf(code) === 'file' && !reasons.has(file)) reasons.set(file, code);
  const sound = <File extends Understood<unknown>>(files: readonly File[]) =>
    files.filter(({ source }) => !reasons.has(source.file));
  const unreadableResults = new Set(
    [...reasons.keys()].map(classifyPath).flatMap((place) => (place.kind === 'result' ? [place.id] : [])),
  );
  const challenges = sound(everything.challenges).filter(({ value }) => !unreadableResults.has(value.id));
  const open = new Set(challenges.map(({ value }) => value.id));
  const entries = sound(everything.entries).filter(({ value }) => open.has(value.challenge));
  const kept = new Set(entries.map(({ value }) => `${value.challenge}/${value.id}`));
  const content: Everything = {
    site: everything.site !== null && !reasons.has(everything.site.source.file) ? everything.site : null,
    logo: everything.logo,
    pages: sound(everything.pages),
    builders: sound(everything.builders),
    challenges,
    entries,
    rulings: sound(everything.rulings).filter(({ value }) => kept.has(`${value.challenge}/${value.entry}`)),
    results: sound(everything.results).filter(({ value }) => open.has(value.challenge.id)),
    batches: sound(everything.batches),
    news: sound(everything.news),
  };
  const published = publishedFiles(content);
  const fates = listing.files.map((file) => fateOf(file, published, reasons, problems));
  const links = listing.links.map(
    (file): FileAccount => ({ file, fate: 'ignored', why: 'link-not-followed' }),
  );
  return {
    ...content,
    leftOut: entryFolders(listing.files).filter(({ challenge, entry }) => !kept.has(`${challenge}/${entry}`)),
    problems: [...problems].sort(byPlace),
    files: [...fates, ...links, ...listing.ignored].sort((a, b) => (a.file < b.file ? -1 : 1)),
  };
}

/** Every file that the site shows or is worked out from. */
function publishedFiles(content: Everything): Set<string> {
  const { site, logo, pages, builders, challenges, entries, rulings, results, batches, news } = content;
  const texts: readonly Understood<unknown>[] = [
    ...(site === null ? [] : [site]),
    ...pages,
    ...builders,
    ...challenges,
    ...entries,
    ...rulings,
    ...results,
    ...batches,
    ...news,
  ];
  const published = new Set(texts.map(({ source }) => source.file));
  if (logo !== null) published.add(logo.source);
  for (const { source, photos, logs } of entries) {
    for (const photo of photos) published.add(photo.source);
    for (const log of [...logs.thrust.keys(), ...logs.torque.keys()])
      published.add(folderOf(source.file) + log);
  }
  for (const { value, source } of batches) {
    const logs = [
      ...testLogsNamed(source, 'stretch-tests').filter(
        (_, index) => value.stretchTests[index]?.points != null,
      ),
      ...testLogsNamed(source, 'torque-tests').filter((_, index) => value.torqueTests[index]?.points != null),
    ];
    for (const log of logs) if (log !== null) published.add(folderOf(source.file) + log.name);
  }
  return published;
}

function fateOf(
  file: string,
  published: ReadonlySet<string>,
  reasons: ReadonlyMap<string, string>,
  problems: readonly Problem[],
): FileAccount {
  if (published.has(file)) return { file, fate: 'published', why: null };
  const passedOver = problems.find(
    (problem) => problem.file === file && ['unused-file', 'unexpected-file'].includes(problem.code),
  );
  if (passedOver !== undefined) return { file, fate: 'ignored', why: passedOver.code };
  const own =
    reasons.get(file) ??
    problems.find((problem) => problem.file === file && problem.severity === 'error')?.code;
  return { file, fate: 'left-out', why: own ?? standsOn(file) };
}

/** What a file without a mistake of its own was left out with. */
function standsOn(file: string): string {
  const { kind } = classifyPath(file);
  if (kind === 'entry' || kind === 'result') return 'its challenge is left out';
  if (kind === 'challenge') return 'its frozen result is left out';
  if (kind === 'ruling') return 'its entry is left out';
  return 'what names it is left out, or could not use it';
}

function entryFolders(files: readonly string[]): { readonly challenge: string; readonly entry: string }[] {
  const folders = new Map<string, { readonly challenge: string; readonly entry: string }>();
  for (const file of files) {
    const place = classifyPath(file);
    if (place.kind === 'entry' || place.kind === 'entry-asset')
      folders.set(folderOf(file), { challenge: place.challenge, entry: place.id });
  }
  return [...folders.values()];
}
