import { checkText } from '../check/text-checks.ts';
import { cutProblems } from '../problems/cut-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { toldOnce } from '../problems/told-once.ts';
import { limits } from '../source/limits.ts';
import { readJsonSource, readSource } from '../source/read-source.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Split } from '../source/split-plain.ts';
import { understandBatch } from '../understand/batch.ts';
import { understandBuilder } from '../understand/builder.ts';
import { understandChallenge } from '../understand/challenge.ts';
import { understandEntry } from '../understand/entry.ts';
import { understandFrozenResult } from '../understand/frozen-result.ts';
import { understandNews } from '../understand/news.ts';
import { understandPage } from '../understand/page.ts';
import { understandRuling } from '../understand/ruling.ts';
import { understandSite } from '../understand/site.ts';
import { classifyPath, type Place } from './classify-path.ts';
import { concurrently } from './concurrently.ts';
import type { Understood } from './content.ts';
import { type Disk, readText } from './disk.ts';
import type { Gathered } from './gathered.ts';
import { type Listing, thereIn } from './listing.ts';

const codes = { tooLarge: 'file-too-large', unreadable: 'unreadable-file', notText: 'not-utf-8' } as const;

/** How many files are read from the disk at a time. */
const atATime = 16;

type Mutable<T> = { -readonly [Key in keyof T]: T[Key] extends readonly (infer Item)[] ? Item[] : T[Key] };

/** Reads every text file of the folder and says what each means by itself. */
export async function gather(
  listing: Listing,
  disk: Disk,
  split: Split,
): Promise<{ readonly gathered: Gathered; readonly problems: readonly Problem[] }> {
  const problems: Problem[] = [];
  const sources = new Map<string, SourceDocument | null>();
  const gathered: Mutable<Gathered> = {
    site: null,
    pages: [],
    builders: [],
    challenges: [],
    entries: [],
    rulings: [],
    results: [],
    batches: [],
    news: [],
    there: { ...thereIn(listing), sources },
  };
  const texts = listing.files
    .map((file) => ({ file, place: classifyPath(file) }))
    .filter(({ place }) => isText(place));
  const read = await concurrently(texts, atATime, async ({ file, place }) => {
    const { text, problems: unreadable } = await readText(disk, file, limits.fileBytes, codes);
    if (text === null) return { file, place, source: null, problems: unreadable };
    return {
      file,
      place,
      ...(place.kind === 'result' ? readJsonSource(file, text) : readSource(file, text, split)),
    };
  });
  for (const { file, place, source, problems: ofFile } of read) {
    sources.set(file, source);
    if (source === null) {
      problems.push(...ofFile);
      continue;
    }
    const understood = toldOnce(ofFile, add(gathered, place, source));
    const ofText = checkText(source, place.kind === 'entry');
    problems.push(...cutProblems(source, [...ofFile, ...understood, ...ofText]));
  }
  return { gathered, problems };
}

function isText(place: Place): boolean {
  return !['asset', 'entry-asset', 'batch-asset', 'unexpected'].includes(place.kind);
}

/** Understands one file and puts it where it belongs; gives what is wrong with it. */
function add(gathered: Mutable<Gathered>, place: Place, source: SourceDocument): readonly Problem[] {
  const keep = <Thing>(list: Understood<Thing>[], value: Thing | null): void => {
    if (value !== null) list.push({ value, source });
  };
  if (place.kind === 'site') {
    const { site, problems } = understandSite(source);
    if (site !== null) gathered.site = { value: site, source };
    return problems;
  }
  if (place.kind === 'entry') {
    const { entry, problems } = understandEntry(source, place);
    keep(gathered.entries, entry);
    return problems;
  }
  if (place.kind === 'ruling') {
    const { ruling, problems } = understandRuling(source, { challenge: place.challenge, entry: place.id });
    keep(gathered.rulings, ruling);
    return problems;
  }
  if (place.kind === 'challenge') {
    const { challenge, problems } = understandChallenge(source, place);
    keep(gathered.challenges, challenge);
    return problems;
  }
  if (place.kind === 'builder') {
    const { builder, problems } = understandBuilder(source, { handle: place.id });
    keep(gathered.builders, builder);
    return problems;
  }
  if (place.kind === 'batch') {
    const { batch, problems } = understandBatch(source, place);
    keep(gathered.batches, batch);
    return problems;
  }
  if (place.kind === 'page') {
    const { page, problems } = understandPage(source, place);
    keep(gathered.pages, page);
    return problems;
  }
  if (place.kind === 'news') {
    const { post, problems } = understandNews(source, place);
    keep(gathered.news, post);
    return problems;
  }
  if (place.kind === 'result') {
    const { frozen, problems } = understandFrozenResult(source, { challenge: place.id });
    keep(gathered.results, frozen);
    return problems;
  }
  return [];
}
