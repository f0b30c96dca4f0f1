import type { Better } from '../../charts/plot/frontier.ts';
import type { Kind } from '../../quantities/quantity.ts';

/** A figure that can be an axis. */
export interface PlotFigure {
  readonly id: string;
  readonly name: string;
  readonly kind: Kind;
  /** Symbols of the units it is shown in. */
  readonly metric: string;
  readonly imperial: string;
  /** Which way is taken as the better one; null where neither is. */
  readonly better: Better | null;
  /** True where it rests on a flight, and so on a ruling. */
  readonly ofFlight: boolean;
}

/** A value in SI with its standard uncertainty, or the reason why there is none. */
export type PlotValue = { readonly value: number; readonly u: number } | { readonly absent: string };

/** One aircraft with its figures by id. */
export interface PlotEntry {
  readonly challenge: string;
  readonly id: string;
  readonly name: string;
  readonly divisions: readonly string[];
  /** True where its time waits for a ruling. */
  readonly waiting: boolean;
  readonly figures: ReadonlyMap<string, PlotValue>;
}

/** What a plot is chosen from: the aircraft of one challenge, or of several. */
export interface PlotData {
  /** Titles by id. */
  readonly challenges: ReadonlyMap<string, string>;
  readonly figures: readonly PlotFigure[];
  readonly divisions: readonly { readonly id: string; readonly name: string }[];
  readonly entries: readonly PlotEntry[];
}

/**
 * The same as it travels: the figures of an aircraft in the order of `figures`, each a value with its ±, or the number
 * of a reason.
 */
export interface PackedPlotData {
  readonly challenge: { readonly id: string; readonly title: string };
  readonly figures: readonly PlotFigure[];
  readonly divisions: PlotData['divisions'];
  readonly reasons: readonly string[];
  readonly entries: readonly (Pick<PlotEntry, 'id' | 'name' | 'divisions' | 'waiting'> & {
    readonly values: readonly (readonly [value: number, u: number] | number)[];
  })[];
}

/** One challenge's data, packed. */
export function packed(data: PlotData): PackedPlotData {
  const [[id, title] = ['', '']] = data.challenges;
  const reasons: string[] = [];
  const placeOf = (reason: string) => {
    const place = reasons.indexOf(reason);
    return place < 0 ? reasons.push(reason) - 1 : place;
  };
  return {
    challenge: { id, title },
    figures: data.figures,
    divisions: data.divisions,
    entries: data.entries.map((entry) => ({
      id: entry.id,
      name: entry.name,
      divisions: entry.divisions,
      waiting: entry.waiting,
      values: data.figures.map((figure) => {
        const found = entry.figures.get(figure.id) ?? { absent: '' };
        return 'absent' in found ? placeOf(found.absent) : ([found.value, found.u] as const);
      }),
    })),
    reasons,
  };
}

/** Several challenges together, in their order: every figure and every division that any of them has. */
export function unpacked(all: readonly PackedPlotData[]): PlotData {
  return {
    challenges: new Map(all.map(({ challenge }) => [challenge.id, challenge.title])),
    figures: distinct(all.flatMap(({ figures }) => figures)),
    divisions: distinct(all.flatMap(({ divisions }) => divisions)),
    entries: all.flatMap(({ challenge, figures, reasons, entries }) =>
      entries.map(({ values, ...entry }) => ({
        ...entry,
        challenge: challenge.id,
        figures: new Map(
          figures.map(({ id }, place): [string, PlotValue] => {
            const found = values[place] ?? 0;
            return [
              id,
              typeof found === 'number' ? { absent: reasons[found] ?? '' } : { value: found[0], u: found[1] },
            ];
          }),
        ),
      })),
    ),
  };
}

/** The first of each id, in the order in which they come. */
function distinct<T extends { readonly id: string }>(all: readonly T[]): T[] {
  const found = new Map<string, T>();
  for (const one of all) if (!found.has(one.id)) found.set(one.id, one);
  return [...found.values()];
}
