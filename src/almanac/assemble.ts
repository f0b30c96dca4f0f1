import type { Content } from '../entries/folder/content.ts';
import { slug } from '../entries/folder/slug-rules.ts';
import { byPlace } from '../entries/problems/problem.ts';
import { evaluateBatch } from '../figures/evaluate.ts';
import type { Builder, Site } from '../model/site.ts';
import type { Almanac, BuilderRecord, ChallengeRecord } from './almanac.ts';
import { type Entrant, entrantsOf, type SealFlights } from './entrants.ts';
import { juniorHandles } from './file-to-change.ts';
import { buildersOnFile, everyBuilder } from './known-builders.ts';
import { textOfPage } from './peoples-text.ts';
import { problemsAcross } from './problems-across.ts';
import { recordChallenge } from './record-challenge.ts';
import { redirectsOf } from './redirects.ts';

/**
 * Puts everything together, once: what a content folder holds becomes all that the site says.
 *
 * @param now the instant of the build, ISO 8601; the only clock there is
 */
export function assemble(content: Content, now: string, sealFlights: SealFlights): Almanac {
  const entrants = entrantsOf(content, sealFlights);
  const known = buildersOnFile(content.builders);
  const juniors = juniorHandles(entrants);
  const results = new Map(content.results.map(({ value }) => [value.challenge.id, value]));
  const challenges = content.challenges
    .map(({ value }) => recordChallenge(value, entrants, results.get(value.id) ?? null, juniors, now))
    .sort(newestFirst);
  const crossed = problemsAcross(challenges, entrants, content, now);

  const site = content.site?.value ?? siteWithoutFile;
  return {
    site,
    siteHtml: textOfPage(site.body),
    logo: content.logo,
    now,
    challenges,
    featured: featuredChallenge(site, challenges),
    builders: recordBuilders(
      entrants,
      known,
      challenges.flatMap(({ frozen }) => (frozen?.entries ?? []).flatMap(({ builders }) => builders)),
    ),
    pages: content.pages
      .map(({ value }) => ({ page: value, html: textOfPage(value.body) }))
      .sort((a, b) => order(a.page.order) - order(b.page.order) || (a.page.id < b.page.id ? -1 : 1)),
    news: content.news
      .map(({ value }) => ({ post: value, html: textOfPage(value.body) }))
      .sort((a, b) => (a.post.id < b.post.id ? 1 : -1)),
    batches: content.batches.map(({ value }) => ({
      batch: value,
      figures: evaluateBatch(value),
      html: textOfPage(value.body),
    })),
    // Of a folder whose name no address can hold there is no page to tell of it; `check` does.
    leftOut: content.leftOut.filter(({ challenge, entry }) => slug.test(challenge) && slug.test(entry)),
    redirects: redirectsOf(content),
    problems: [...content.problems, ...crossed].sort(byPlace),
    files: content.files,
  };
}

function recordBuilders(
  entrants: readonly Entrant[],
  known: ReadonlyMap<string, Builder>,
  inResults: readonly string[],
): BuilderRecord[] {
  const entries = entrants.map(({ contender }) => contender.entry);
  return everyBuilder(entries, known, inResults).map((builder) => ({
    builder,
    entries: entries
      .filter(({ builders }) => builders.some(({ handle }) => handle === builder.handle))
      .map(({ challenge, id }) => ({ challenge, entry: id })),
    html: textOfPage(builder.body),
  }));
}

/** The one that site.md names, else the open one that opened last, else the newest. */
function featuredChallenge(site: Site, challenges: readonly ChallengeRecord[]): string | null {
  const named = challenges.find(({ challenge }) => challenge.id === site.featured);
  const open = challenges.find(({ state }) => state === 'open');
  return (named ?? open ?? challenges[0])?.challenge.id ?? null;
}

function newestFirst(a: ChallengeRecord, b: ChallengeRecord): number {
  if (a.challenge.opens !== b.challenge.opens) return a.challenge.opens < b.challenge.opens ? 1 : -1;
  return a.challenge.id < b.challenge.id ? -1 : 1;
}

function order(value: number | null): number {
  return value ?? Number.MAX_SAFE_INTEGER;
}

/** So that a folder whose site.md is missing or broken can still be checked; nothing is built from it. */
const siteWithoutFile: Site = {
  format: 1,
  title: 'Duration challenge',
  club: null,
  address: null,
  repository: null,
  sendTo: null,
  units: 'metric',
  featured: null,
  logo: null,
  accent: null,
  links: [],
  licence: null,
  body: '',
};
