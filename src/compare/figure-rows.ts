import { type ComparedAircraft, type ComparedFigure, isThere } from './aircraft.ts';
import { furthestApart, toldApart } from './apart.ts';

/** One figure of all aircraft, in their order. */
export interface FigureRow {
  readonly id: string;
  readonly name: string;
  /** Undefined where an aircraft does not know the figure at all. */
  readonly cells: readonly (ComparedFigure | undefined)[];
  /** The largest distance between two of them in uncertainties of their difference; null where fewer than two have it. */
  readonly apart: number | null;
}

/** Figures sorted by what a comparison can say of them. */
export interface SortedFigures {
  /** Told apart; what differs most for its uncertainty first. */
  readonly different: readonly FigureRow[];
  /** The same within their uncertainty, in their own order. */
  readonly alike: readonly FigureRow[];
  /** Fewer than two aircraft have it. */
  readonly alone: readonly FigureRow[];
}

/** Every figure that any of the aircraft knows. */
export function sortFigures(aircraft: readonly Pick<ComparedAircraft, 'figures'>[]): SortedFigures {
  const byId = aircraft.map(({ figures }) => new Map(figures.map((figure) => [figure.id, figure])));
  const names = new Map(aircraft.flatMap(({ figures }) => figures.map(({ id, name }) => [id, name])));
  const rows = [...names].map(([id, name]): FigureRow => {
    const cells = byId.map((figures) => figures.get(id));
    const there = cells.flatMap((cell) => (isThere(cell) ? [cell] : []));
    return { id, name, cells, apart: furthestApart(there) };
  });
  const differs = ({ apart }: FigureRow) => apart !== null && apart > toldApart;
  return {
    different: rows.filter(differs).toSorted(furthestFirst),
    alike: rows.filter((row) => row.apart !== null && !differs(row)),
    alone: rows.filter((row) => row.apart === null),
  };
}

function furthestFirst({ apart: a }: FigureRow, { apart: b }: FigureRow): number {
  // Two that are infinitely far apart have no difference.
  return a === b ? 0 : (b ?? 0) - (a ?? 0);
}
