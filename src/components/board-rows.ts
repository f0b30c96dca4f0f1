import type { Almanac, ChallengeRecord, EntryRecord } from '../almanac/almanac.ts';
import { foldedLetters } from '../client/board/folded-letters.ts';
import type { Standing } from '../contest/standing.ts';
import { drawThumbnail } from '../drawings/draw-thumbnail.ts';
import { type FigureSet, isPresent, type PresentFigure } from '../figures/figure.ts';
import type { Control } from '../model/design.ts';
import { significant } from '../quantities/decimal.ts';
import { type ShownBuilder, shownBuilders } from './builder-name.ts';
import { columnInBoth } from './column-texts.ts';
import type { InBoth } from './measure.ts';
import { scoreText } from './score-text.ts';

/** A figure on a board. */
export interface BoardFigure {
  readonly text: InBoth;
  /** SI, for sorting: whatever system is shown, the order is the same. Of several motors the first, as in the text. */
  readonly value: number;
}

/** One line of a board, as text, with the numbers to sort it by. */
export interface BoardRow {
  readonly place: number;
  readonly entry: string;
  readonly name: string;
  /** The aircraft from above as a small SVG; empty where nothing gives its wing a depth. */
  readonly drawing: string;
  readonly builders: readonly ShownBuilder[];
  readonly score: string;
  /** Seconds, for sorting. */
  readonly seconds: number;
  readonly provisional: boolean;
  readonly reached: boolean;
  readonly within: readonly string[];
  /** The line that explains the place; null where there is none to give. */
  readonly why: string | null;
  readonly figures: readonly (BoardFigure | null)[];
  /** How many of its flights count. */
  readonly counted: number;
  /** As it was flown for this score; null where nobody can read the entry any more. */
  readonly control: Control | null;
  /** False where the entry's address only says that it is being looked at. */
  readonly published: boolean;
}

/** The figures that stand on a board, in the order of its columns. */
export const boardFigures = ['span', 'wing-loading', 'energy-per-gram', 'duration-per-turn'] as const;

/** So many digits tell two neighbours apart; more would only weigh. */
const digitsToSort = 6;

/** Finds what pages say of an entry of this challenge, also of one that is left out of a final result. */
export function entryLookup(almanac: Almanac, record: ChallengeRecord) {
  const records = new Map(record.entries.map((entry) => [entry.entry.id, entry]));
  const frozen = new Map((record.frozen?.entries ?? []).map((entry) => [entry.id, entry]));
  return {
    record: (id: string): EntryRecord | undefined => records.get(id),
    name: (id: string): string => records.get(id)?.entry.name ?? frozen.get(id)?.name ?? id,
    builders: (id: string): ShownBuilder[] => {
      const known = records.get(id);
      if (known !== undefined) return shownBuilders(almanac, known.entry.builders);
      return shownBuilders(
        almanac,
        (frozen.get(id)?.builders ?? []).map((handle) => ({ handle, name: null, club: null, junior: false })),
      );
    },
  };
}

/** Lines of the standings, of the whole challenge or of a division. */
export function boardRows(
  almanac: Almanac,
  record: ChallengeRecord,
  standings: readonly Standing[],
): BoardRow[] {
  const entries = entryLookup(almanac, record);
  const columns = boardFigures.map((id) =>
    columnOf(
      standings.map((standing) => {
        const known = entries.record(standing.entry);
        return known === undefined ? [] : figuresNamed(known.figures, id);
      }),
    ),
  );
  return standings.map((standing, index) => {
    const known = entries.record(standing.entry);
    const judged = record.result.entries.get(standing.entry);
    return {
      place: standing.place,
      entry: standing.entry,
      name: entries.name(standing.entry),
      drawing: known === undefined ? '' : drawThumbnail(known.headline.design, known.figures),
      builders: entries.builders(standing.entry),
      score: scoreText(record.challenge, standing.score),
      seconds: standing.score,
      provisional: standing.provisional,
      reached: judged?.flights.some((flight) => flight.counted && flight.reachedTarget) ?? false,
      within: standing.withinTimingErrorOf.map(entries.name),
      why: record.places.overall.get(standing.entry) ?? null,
      figures: columns.map((column) => column[index] ?? null),
      counted: judged?.flights.filter((flight) => flight.counted).length ?? standing.flights.length,
      control: known?.headline.design.control ?? null,
      published: !almanac.leftOut.some(
        (one) => one.challenge === record.challenge.id && one.entry === standing.entry,
      ),
    };
  });
}

/**
 * Where the target line stands: after how many rows. Null where no single line parts those who reached the target
 * from the others, as with a handicap; the rows then say so one by one.
 */
export function targetLineAfter(rows: readonly BoardRow[]): number | null {
  const first = rows.findIndex((row) => !row.reached);
  const above = first === -1 ? rows.length : first;
  return rows.slice(above).some((row) => row.reached) ? null : above;
}

/** The builders of these rows, each once, by the name they appear under. */
export function buildersOf(rows: readonly BoardRow[]): ShownBuilder[] {
  const known = new Map(rows.flatMap(({ builders }) => builders.map((one) => [one.handle, one] as const)));
  return [...known.values()].sort(
    (a, b) => compared(foldedLetters(a.name), foldedLetters(b.name)) || compared(a.handle, b.handle),
  );
}

function compared(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function columnOf(lines: readonly (readonly PresentFigure[])[]): (BoardFigure | null)[] {
  return columnInBoth(lines).map((text, index) => {
    const [first] = lines[index] ?? [];
    return text === null || first === undefined
      ? null
      : { text, value: significant(first.value, digitsToSort) };
  });
}

/** The figure of that name; those of the motors where it is one of motors. */
function figuresNamed(figures: FigureSet, id: string): readonly PresentFigure[] {
  const whole = figures.entry.get(id);
  if (isPresent(whole)) return [whole];
  return figures.motors.map((motor) => motor.get(id)).filter((figure) => isPresent(figure));
}
