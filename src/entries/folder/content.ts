import type { FrozenResult } from '../../contest/frozen/frozen.ts';
import type { Batch } from '../../model/batch.ts';
import type { BenchLogs } from '../../model/bench-log.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Entry } from '../../model/entry.ts';
import type { Ruling } from '../../model/ruling.ts';
import type { Builder, ClubPage, NewsPost, Site } from '../../model/site.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';

/** One file, understood, with the text it was read from, so that whatever is found out later has a place. */
export interface Understood<Thing> {
  readonly value: Thing;
  readonly source: SourceDocument;
}

/** A picture that can be published. */
export interface ReadPhoto {
  /** Its plain name in the folder of what it belongs to. */
  readonly file: string;
  readonly alt: string;
  /** Path of the original, relative to the content folder, with `/`. */
  readonly source: string;
  /** First 16 hexadecimal digits of the SHA-256 of the original's bytes. */
  readonly hash: string;
  /** Of the picture turned upright, in pixels. */
  readonly width: number;
  readonly height: number;
}

/** One entry with everything in its folder. */
export interface ReadEntry extends Understood<Entry> {
  /** Plain names of the other files in its folder, sorted. */
  readonly folder: readonly string[];
  /** Those of the entry's photos that could be read, in the entry's order. */
  readonly photos: readonly ReadPhoto[];
  readonly logs: BenchLogs;
}

/** What became of each file below the content folder. */
export interface FileAccount {
  /** Relative to the content folder, with `/`; a folder ignored as a whole ends with `/`. */
  readonly file: string;
  readonly fate: 'published' | 'left-out' | 'ignored';
  /** The named rule by which it was ignored, or the code of the problem that left it out. */
  readonly why: string | null;
}

/** Everything a content folder holds, sorted by name; nothing that has an error costing its file is among it. */
export interface Content {
  readonly site: Understood<Site> | null;
  readonly logo: ReadPhoto | null;
  readonly pages: readonly Understood<ClubPage>[];
  readonly builders: readonly Understood<Builder>[];
  readonly challenges: readonly Understood<Challenge>[];
  /** By challenge, then by id. */
  readonly entries: readonly ReadEntry[];
  readonly rulings: readonly Understood<Ruling>[];
  readonly results: readonly Understood<FrozenResult>[];
  /** With the points of their logs, where those could be read. */
  readonly batches: readonly Understood<Batch>[];
  readonly news: readonly Understood<NewsPost>[];
  /** Entries that are in the folder and not in `entries`. */
  readonly leftOut: readonly { readonly challenge: string; readonly entry: string }[];
  /** In the order of all printers. */
  readonly problems: readonly Problem[];
  readonly files: readonly FileAccount[];
}
