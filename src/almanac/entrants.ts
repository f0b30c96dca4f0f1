import type { Contender } from '../contest/contender.ts';
import { isJunior } from '../contest/rules/junior-team.ts';
import type { Content, ReadEntry } from '../entries/folder/content.ts';
import { type FiguresOfEntry, figuresOfEntry } from '../figures/figures-of-entry.ts';
import { inspectedSetups } from '../figures/inspect.ts';
import type { Batch } from '../model/batch.ts';
import type { Entry } from '../model/entry.ts';
import type { Ruling } from '../model/ruling.ts';
import type { Builder } from '../model/site.ts';
import { handWatch } from '../timing/hand-watch.ts';
import { buildersOnFile, withKnownBuilders } from './known-builders.ts';

/** Seals of an entry's flights as they are written now, by flight number. Hashing is done at the edge. */
export type SealFlights = (entry: ReadEntry) => ReadonlyMap<number, string>;

/** An entry on its way into the almanac. */
export interface Entrant {
  readonly read: ReadEntry;
  readonly contender: Contender;
  readonly figures: FiguresOfEntry;
}

/** Every entry as the contest sees it, with its figures: what judging, ruling and freezing start from. */
export function entrantsOf(content: Content, sealFlights: SealFlights): Entrant[] {
  const known = buildersOnFile(content.builders);
  const batches = new Map(content.batches.map(({ value }) => [value.id, value]));
  const rulings = new Map(content.rulings.map(({ value }) => [`${value.challenge}/${value.entry}`, value]));
  const watches = new Map(content.challenges.map(({ value }) => [value.id, value.timing.uncertainty.watch]));
  return content.entries.map((read) => {
    const { challenge, id } = read.value;
    const ruling = rulings.get(`${challenge}/${id}`) ?? null;
    return enter(read, known, batches, ruling, watches.get(challenge) ?? handWatch, sealFlights);
  });
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
