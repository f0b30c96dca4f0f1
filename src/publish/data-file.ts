import type { Almanac, ChallengeRecord, EntryRecord } from '../almanac/almanac.ts';
import type { FrozenResult } from '../contest/frozen/frozen.ts';
import type { Standing } from '../contest/standing.ts';
import { significant } from '../quantities/decimal.ts';
import { figureData, motorsData } from './figure-data.ts';

/**
 * `/data/<challenge>.json`: everything a board and its entries show, for other programs. The order of keys is fixed;
 * numbers are SI with 12 significant digits; scores are the rounded ones. An entry that is part of a frozen result
 * but can no longer be read keeps its flights and has no figures.
 */
export function challengeData(record: ChallengeRecord): string {
  const { challenge, result } = record;
  const readable = new Set(record.entries.map(({ entry }) => entry.id));
  const frozenOnly = (record.frozen?.entries ?? []).filter(({ id }) => !readable.has(id));
  const entries = [...record.entries.map(entryData), ...frozenOnly.map(frozenEntryData)];
  return dataText({
    format: 1,
    challenge: {
      id: challenge.id,
      title: challenge.title,
      opens: challenge.opens,
      closes: challenge.closes,
      state: record.state,
      target: challenge.target === null ? null : significant(challenge.target.time),
    },
    standings: result.standings.map(standingData),
    claims: result.claims.map((claim) => ({
      entry: claim.entry,
      score: significant(claim.score),
      flights: claim.flights,
    })),
    unplaced: result.unplaced.map(({ entry, reason }) => ({ entry, reason })),
    divisions: Object.fromEntries(
      [...result.divisions].map(([id, standings]) => [
        id,
        standings.map(({ place, entry, score }) => ({ place, entry, score: significant(score) })),
      ]),
    ),
    entries: entries.sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)),
  });
}

/** `/data/rubber.json`: the batches of rubber with their figures. */
export function rubberData(almanac: Pick<Almanac, 'batches'>): string {
  return dataText({
    batches: almanac.batches.map(({ batch, figures }) => ({
      id: batch.id,
      label: batch.label,
      figures: figureData(figures.entry),
    })),
  });
}

/** A standing as data files and frozen results write it. */
export function standingData(standing: Omit<Standing, 'u'>) {
  return {
    place: standing.place,
    entry: standing.entry,
    divisions: standing.divisions,
    score: significant(standing.score),
    provisional: standing.provisional,
    flights: standing.flights,
    'tie-break': standing.tieBreak,
    'within-timing-error-of': standing.withinTimingErrorOf,
  };
}

function entryData(record: EntryRecord) {
  const { entry } = record;
  return {
    id: entry.id,
    name: entry.name,
    builders: entry.builders.map(({ handle }) => handle),
    setup: record.headline.id,
    flights: record.judged.flights.map((judged) => {
      // A final result keeps flights that their entry no longer tells of; they have no figures.
      const figures = record.flights.find(({ flight }) => flight.number === judged.number)?.figures;
      return {
        number: judged.number,
        date: judged.date,
        official: significant(judged.official.seconds),
        status: judged.status,
        reason: judged.reason,
        setup: judged.setup,
        figures: figures === undefined ? {} : figureData(figures.entry),
        motors: figures === undefined ? [] : motorsData(figures),
      };
    }),
    figures: figureData(record.figures.entry),
    motors: motorsData(record.figures),
    // The entry as first written is no item of the builder's list of setups: only what was listed stands here.
    setups: entry.setups.flatMap((setup, index) => {
      const figures = record.setupFigures[index];
      return setup.id === null || figures === undefined
        ? []
        : [{ id: setup.id, figures: figureData(figures.entry), motors: motorsData(figures) }];
    }),
  };
}

function frozenEntryData(entry: FrozenResult['entries'][number]) {
  return {
    id: entry.id,
    name: entry.name,
    builders: entry.builders,
    setup: null,
    flights: entry.flights.map(({ number, date, official, status, reason }) => ({
      number,
      date,
      official: significant(official),
      status,
      reason,
      setup: null,
      figures: {},
      motors: [],
    })),
    figures: {},
    motors: [],
    setups: [],
  };
}

function dataText(data: object): string {
  return `${JSON.stringify(data)}\n`;
}
