import type { Plot, PlotPoint } from '../../charts/plot/plot.ts';
import { unbeaten } from '../../charts/plot/plot-layout.ts';
import { printed, valueWithoutU, valueWithU } from '../../components/number-text.ts';
import { toUnit } from '../../quantities/format.ts';
import type { PlotChoice } from './plot-choice.ts';
import type { PlotData, PlotEntry, PlotFigure, PlotValue } from './plot-data.ts';

export type System = 'metric' | 'imperial';

/** An aircraft of a plot, as text: one row of the table beside it. */
export interface PlotRow {
  /** As in the plot. */
  readonly id: string;
  readonly entry: PlotEntry;
  /** With ± and unit. */
  readonly x: string;
  readonly y: string;
  /** Without the ±. */
  readonly plainX: string;
  readonly plainY: string;
  readonly best: boolean;
  readonly marked: boolean;
  readonly waiting: boolean;
}

/** Why an aircraft is not in a plot: a figure that is absent, or one that a logarithm does not have. */
export interface Missing {
  readonly entry: PlotEntry;
  readonly figure: PlotFigure;
  /** Such as "needs a flight that can count"; null where the value is not above zero and its axis is logarithmic. */
  readonly absent: string | null;
}

/** The plot that somebody chose, with its table and those it leaves out. */
export interface ChosenPlot {
  readonly x: PlotFigure;
  readonly y: PlotFigure;
  readonly plot: Plot;
  /** From the smallest x to the largest. */
  readonly rows: readonly PlotRow[];
  readonly missing: readonly Missing[];
}

/** Puts a choice into effect; null where the data have no figure of that id. */
export function chosenPlot(data: PlotData, choice: PlotChoice, system: System): ChosenPlot | null {
  const x = data.figures.find(({ id }) => id === choice.x);
  const y = data.figures.find(({ id }) => id === choice.y);
  if (x === undefined || y === undefined) return null;
  const axes = [
    { figure: x, logarithmic: choice.logX },
    { figure: y, logarithmic: choice.logY },
  ];
  const missing = data.entries.flatMap((entry) =>
    axes.flatMap(({ figure, logarithmic }) => missingOf(entry, figure, logarithmic)).slice(0, 1),
  );
  const left = new Set(missing.map(({ entry }) => entry));
  const shown = data.entries
    .filter((entry) => !left.has(entry))
    .map((entry) => ({ entry, x: presentIn(entry, x), y: presentIn(entry, y) }))
    .toSorted((a, b) => a.x.value - b.x.value || a.y.value - b.y.value);
  const waits = (entry: PlotEntry) => entry.waiting && (x.ofFlight || y.ofFlight);
  const [inX, inY] = [unitsPerSi(x, system), unitsPerSi(y, system)];
  const points = shown.map(
    (one): PlotPoint => ({
      id: idOf(one.entry),
      name: one.entry.name,
      x: one.x.value * inX,
      y: one.y.value * inY,
      ux: one.x.u * inX,
      uy: one.y.u * inY,
      marked: choice.division !== null && one.entry.divisions.includes(choice.division),
      waiting: waits(one.entry),
    }),
  );
  const plot: Plot = {
    x: { label: axisLabel(x, system), logarithmic: choice.logX, better: x.better },
    y: { label: axisLabel(y, system), logarithmic: choice.logY, better: y.better },
    points,
    bars: choice.bars,
  };
  const best = new Set(unbeaten(plot).map(({ id }) => id));
  const rows = shown.map((one, index): PlotRow => {
    const { id, marked, waiting } = points[index]!;
    return {
      id,
      entry: one.entry,
      // Written when they are read: of a thousand aircraft few are pointed at.
      get x() {
        return withU(one.x, x, system);
      },
      get y() {
        return withU(one.y, y, system);
      },
      get plainX() {
        return withoutU(one.x, x, system);
      },
      get plainY() {
        return withoutU(one.y, y, system);
      },
      best: best.has(id),
      marked,
      waiting,
    };
  });
  return { x, y, plot, rows, missing };
}

/** Unique over all challenges. */
function idOf({ challenge, id }: PlotEntry): string {
  return `${challenge}/${id}`;
}

function axisLabel(figure: PlotFigure, system: System): string {
  const unit = printed(figure[system]);
  return unit === '' ? figure.name : `${figure.name} (${unit})`;
}

function missingOf(entry: PlotEntry, figure: PlotFigure, logarithmic: boolean): Missing[] {
  const found = entry.figures.get(figure.id) ?? { absent: '' };
  if ('absent' in found) return [{ entry, figure, absent: found.absent }];
  return logarithmic && found.value <= 0 ? [{ entry, figure, absent: null }] : [];
}

type Present = Exclude<PlotValue, { absent: string }>;

function presentIn(entry: PlotEntry, figure: PlotFigure): Present {
  const found = entry.figures.get(figure.id);
  if (found === undefined || 'absent' in found) throw new RangeError(`${entry.id} has no ${figure.id}`);
  return found;
}

/** No figure is a temperature, so that one factor converts a value and its ±. */
function unitsPerSi(figure: PlotFigure, system: System): number {
  return toUnit(1, figure.kind, figure[system]);
}

function withU({ value, u }: Present, figure: PlotFigure, system: System): string {
  return valueWithU(value, u, figure.kind, figure[system]);
}

function withoutU({ value, u }: Present, figure: PlotFigure, system: System): string {
  return valueWithoutU(value, u, figure.kind, figure[system]);
}
