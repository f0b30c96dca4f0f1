import type { Contender } from '../contest/contender.ts';
import { challengeAsFrozen } from '../contest/frozen/challenge-as-frozen.ts';
import type { FrozenResult } from '../contest/frozen/frozen.ts';
import { underNamesOfToday } from '../contest/frozen/under-names-of-today.ts';
import { historyOf } from '../contest/history/history.ts';
import { judge } from '../contest/judge.ts';
import type { Content, ReadEntry } from '../entries/folder/content.ts';
import { slug } from '../entries/folder/slug-rules.ts';
import { byPlace } from '../entries/problems/problem.ts';
import { evaluateBatch } from '../figures/evaluate.ts';
import { inspectedSetups } from '../figures/inspect.ts';
import type { Batch } from '../model/batch.ts';
import type { Challenge } from '../model/challenge.ts';
import type { Entry } from '../model/entry.ts';
import type { Ruling } from '../model/ruling.ts';
import type { Builder, Site } from '../model/site.ts';
import { handWatch } from '../timing/hand-watch.ts';
import type { Almanac, BuilderRecord, ChallengeRecord } from './almanac.ts';
import { awaitingOf } from './awaiting/awaiting-of.ts';
import { energyUsesOf } from './energy-uses.ts';
import { recordEntry } from './entry-record.ts';
import { explainPlaces } from './explained-places.ts';
import { type FiguresOfEntry, figuresOfEntry } from './figures-of-entry.ts';
import { everyBuilder, isJunior, withKnownBuilders } from './known-builders.ts';
import { textOfPage, textOfSection } from './peoples-text.ts';
import { problemsAcross } from './problems-across.ts';
import { redirectsOf } from './redirects.ts';
import { todayIn } from './today.ts';
import { whenAsked } from './when-asked.ts';

/** Seals of an entry's flights as they are written now, by flight number. Hashing is done at the edge. */
export type SealFlights = (entry: ReadEntry) => ReadonlyMap<number, string>;

/** An entry on its way into the almanac. */
export interface Entrant {
  readonly read: ReadEntry;
  readonly contender: Contender;
  readonly figures: FiguresOfEntry;
}

/**
 * Puts everything together, once: what a content folder holds becomes all that the site says.
 *
 * @param now the instant of the build, ISO 8601; the only clock there is
 */
export function assemble(content: Content, now: string, sealFlights: SealFlights): Almanac {
  const entrants = entrantsOf(content, sealFlights);
  const known = knownBuilders(content);
  const results = new Map(content.results.map(({ value }) => [value.challenge.id, value]));
  const challenges = content.challenges
    .map(({ value }) => recordChallenge(value, entrants, results.get(value.id) ?? null, now))
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

/** Every entry as the contest sees it, with its figures: what judging, ruling and freezing start from. */
export function entrantsOf(content: Content, sealFlights: SealFlights): Entrant[] {
  const known = knownBuilders(content);
  const batches = new Map(content.batches.map(({ value }) => [value.id, value]));
  const rulings = new Map(content.rulings.map(({ value }) => [`${value.challenge}/${value.entry}`, value]));
  const watches = new Map(content.challenges.map(({ value }) => [value.id, value.timing.uncertainty.watch]));
  return content.entries.map((read) => {
    const { challenge, id } = read.value;
    const ruling = rulings.get(`${challenge}/${id}`) ?? null;
    return enter(read, known, batches, ruling, watches.get(challenge) ?? handWatch, sealFlights);
  });
}

function knownBuilders(content: Content): ReadonlyMap<string, Builder> {
  return new Map(content.builders.map(({ value }) => [value.handle, value]));
}

function enter(
  read: ReadEntry,
  known: ReadonlyMap<string, Builder>,
  batches: ReadonlyMap<string, Batch>,
  ruling: Ruling | null,
  watch: number,
  sealFlights: SealFlights,
): Entrant {
  const named = withKnownBuilders(read.value, known);
  const inspections = ruling?.inspections ?? [];
  const entry: Entry = { ...named, setups: inspectedSetups(named, inspections) };
  const figures = figuresOfEntry(named, inspections, batches, read.logs, watch);
  return {
    read,
    figures,
    contender: {
      entry,
      ruling,
      junior: isJunior(entry),
      seals: ruling === null ? new Map() : sealFlights(read),
      modelFigures: figures.model,
      figuresAtFlight: figures.atFlight,
    },
  };
}

function recordChallenge(
  written: Challenge,
  all: readonly Entrant[],
  asFrozen: FrozenResult | null,
  now: string,
): ChallengeRecord {
  const entrants = all.filter(({ contender }) => contender.entry.challenge === written.id);
  const frozen =
    asFrozen === null
      ? null
      : underNamesOfToday(
          asFrozen,
          entrants.map(({ contender }) => contender.entry),
        );
  const challenge = frozen === null ? written : challengeAsFrozen(written, frozen);
  const today = todayIn(now, challenge.timeZone);
  const contenders = entrants.map(({ contender }) => contender);
  const result = judge(challenge, contenders, { now: today, frozen });
  const history = whenAsked(() => historyOf(challenge, result, contenders, frozen));
  const awaiting = whenAsked(() => awaitingOf(challenge, contenders, result, today));
  const places = whenAsked(() =>
    explainPlaces(
      challenge,
      result,
      contenders.map(({ entry }) => entry),
      frozen,
    ),
  );
  const entries = entrants.map((entrant) =>
    recordEntry(entrant, result.entries.get(entrant.contender.entry.id)!),
  );
  const energyUses = whenAsked(() => energyUsesOf(result, entries));
  return {
    challenge,
    state: result.state,
    result,
    frozen,
    get places() {
      return places();
    },
    get history() {
      return history();
    },
    get awaiting() {
      return awaiting();
    },
    get energyUses() {
      return energyUses();
    },
    entries,
    // The front page shows the site's own text too: their footnotes must not meet.
    html: textOfSection(challenge.body, 'challenge-'),
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
