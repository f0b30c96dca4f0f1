import type { FrozenResult } from '../contest/frozen/frozen.ts';
import type { History } from '../contest/history/history.ts';
import type { ContestResult, JudgedEntry, JudgedFlight } from '../contest/standing.ts';
import type { FileAccount, ReadPhoto } from '../entries/folder/content.ts';
import type { Problem } from '../entries/problems/problem.ts';
import type { EnergyAccount } from '../figures/energy-account.ts';
import type { Figure, FigureSet, PresentFigure } from '../figures/figure.ts';
import type { NoseBallast } from '../figures/nose-ballasts.ts';
import type { TimeParts } from '../figures/time-parts.ts';
import type { Batch } from '../model/batch.ts';
import type { BenchLogs } from '../model/bench-log.ts';
import type { Challenge, ChallengeState } from '../model/challenge.ts';
import type { Entry, Flight, Setup } from '../model/entry.ts';
import type { Ruling } from '../model/ruling.ts';
import type { Builder, ClubPage, NewsPost, Site } from '../model/site.ts';
import type { AwaitingEntry } from './awaiting/awaiting.ts';
import type { ExplainedPlaces } from './explained-places.ts';

/** One flight with everything known of it. */
export interface FlightRecord {
  readonly flight: Flight;
  readonly judged: JudgedFlight;
  /** Figures of the flight; per motor where they differ. */
  readonly figures: FigureSet;
}

/** One aircraft with everything known of it: what the entry page shows. */
export interface EntryRecord {
  readonly entry: Entry;
  readonly challenge: string;
  readonly ruling: Ruling | null;
  readonly judged: JudgedEntry;
  /** The setup whose figures stand in the headline. */
  readonly headline: Setup;
  /** Figures of the model and of the best flight, for the headline setup. */
  readonly figures: FigureSet;
  /** Figures of the model for every setup, in the entry's order. */
  readonly setupFigures: readonly FigureSet[];
  /** Weight in the nose for the usual static margins, in the headline setup. */
  readonly noseBallasts: readonly NoseBallast[];
  /** Where the energy of the flight of the headline went. */
  readonly energyAccount: EnergyAccount;
  /** How far the rubber of each kind of motor was stretched at the launch of that flight. */
  readonly stretchesAtLaunch: readonly Figure[];
  /** What the time of the flight of the headline is made of. */
  readonly timeParts: TimeParts;
  readonly flights: readonly FlightRecord[];
  /** The bench logs that its motors name, those that could be read. */
  readonly logs: BenchLogs;
  readonly photos: readonly ReadPhoto[];
  /** Builder's text as safe HTML. */
  readonly html: string;
  /** True where every builder of it is a junior: shown by handle only, not indexed. */
  readonly junior: boolean;
  /** Its file, letter for letter, to add flights to; null where it is not given out (see `file-to-change.ts`). */
  readonly fileToChange: string | null;
}

export interface ChallengeRecord {
  readonly challenge: Challenge;
  readonly state: ChallengeState;
  readonly result: ContestResult;
  readonly frozen: FrozenResult | null;
  /** Each place in one line that anybody can check. */
  readonly places: ExplainedPlaces;
  /** Records and who set them when, from accepted flights; of a final challenge as it was frozen. */
  readonly history: History;
  /** Flights that wait for something, by entry, the oldest first. */
  readonly awaiting: readonly AwaitingEntry[];
  /** Energy use of every placed model whose figures tell it, the lowest first. */
  readonly energyUses: readonly PresentFigure[];
  /** By id, sorted by it. */
  readonly entries: readonly EntryRecord[];
  readonly html: string;
}

export interface BuilderRecord {
  readonly builder: Builder;
  readonly entries: readonly { readonly challenge: string; readonly entry: string }[];
  readonly html: string;
}

export interface LeftOut {
  readonly challenge: string;
  readonly entry: string;
}

/** Everything the site says, worked out once. Pages, data files and scripts read it and compute nothing. */
export interface Almanac {
  readonly site: Site;
  readonly siteHtml: string;
  /** The club's logo; null where it has none that can be used. */
  readonly logo: ReadPhoto | null;
  /** The instant of the build, ISO 8601; the only clock. */
  readonly now: string;
  /** The newest opening first. */
  readonly challenges: readonly ChallengeRecord[];
  /** Id of the challenge on the front page; null for a site without one. */
  readonly featured: string | null;
  readonly builders: readonly BuilderRecord[];
  readonly pages: readonly { readonly page: ClubPage; readonly html: string }[];
  readonly news: readonly { readonly post: NewsPost; readonly html: string }[];
  readonly batches: readonly { readonly batch: Batch; readonly figures: FigureSet; readonly html: string }[];
  readonly leftOut: readonly LeftOut[];
  /** Old address → new address, both as site paths such as `/entries/a/b/`. */
  readonly redirects: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
  readonly files: readonly FileAccount[];
}
