import type { FrozenResult } from '../../contest/frozen/frozen.ts';
import type { Batch } from '../../model/batch.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Entry } from '../../model/entry.ts';
import type { Ruling } from '../../model/ruling.ts';
import type { Builder, ClubPage, NewsPost, Site } from '../../model/site.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Understood } from './content.ts';

/** All files of a content folder, each understood by itself: what the checks between files look at. */
export interface Gathered {
  readonly site: Understood<Site> | null;
  readonly pages: readonly Understood<ClubPage>[];
  readonly builders: readonly Understood<Builder>[];
  readonly challenges: readonly Understood<Challenge>[];
  readonly entries: readonly Understood<Entry>[];
  readonly rulings: readonly Understood<Ruling>[];
  readonly results: readonly Understood<FrozenResult>[];
  readonly batches: readonly Understood<Batch>[];
  readonly news: readonly Understood<NewsPost>[];
  readonly there: There;
}

/** What is in the folder, understood or not: nobody is told that a file is missing because it has a mistake. */
export interface There {
  /** Paths of all files, relative to the content folder, with `/`. */
  readonly files: ReadonlySet<string>;
  readonly challenges: ReadonlySet<string>;
  /** `<challenge>/<entry>`. */
  readonly entries: ReadonlySet<string>;
  readonly batches: ReadonlySet<string>;
  /** Every Markdown and JSON file that could be read as far as its fields, by path; null where it could not. */
  readonly sources: ReadonlyMap<string, SourceDocument | null>;
}
