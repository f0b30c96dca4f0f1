import type { History } from '../contest/history/history.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { type ChartFrame, tenth } from './chart-parts.ts';
import { type DayTick, dayScale } from './day-scale.ts';
import { type Level, levelsUpTo, type PlacedLevel, placeLevels } from './levels.ts';
import { type Box, boxOf, type PlacedName } from './placed-name.ts';
import { linearScale, type Scale } from './scale.ts';
import type { Point } from './thinned.ts';

/** The words of a progress chart. */
export interface ProgressWords {
  readonly seconds: string;
  readonly days: (first: CalendarDate, last: CalendarDate) => string;
  readonly tick: (tick: DayTick) => string;
  /** A time with a name, such as a target. */
  readonly mark: (seconds: number, label: string | null) => string;
  readonly best: (seconds: number) => string;
}

interface TimedDay {
  readonly date: CalendarDate;
  readonly seconds: number;
}

/** What the chart says, before anybody knows where it stands on paper. */
export interface ProgressChart {
  readonly first: CalendarDate;
  readonly last: CalendarDate;
  readonly steps: readonly TimedDay[];
  /** Every other accepted flight. */
  readonly others: readonly TimedDay[];
  readonly marks: readonly Level[];
  readonly words: ProgressWords;
}

export interface ProgressLayout extends ChartFrame {
  readonly up: { readonly scale: Scale; readonly label: string };
  readonly across: {
    readonly ticks: readonly { readonly x: number; readonly text: string }[];
    readonly label: string;
  };
  /** The corners of the staircase; it goes on to the last day. */
  readonly stairs: readonly Point[];
  readonly steps: readonly Point[];
  readonly others: readonly Point[];
  readonly marks: readonly PlacedLevel[];
  readonly best: PlacedName | null;
}

const frame: ChartFrame = { width: 480, height: 320, left: 48, right: 440, top: 34, bottom: 266 };

/**
 * The progress of the best time from the opening to a day, with the target and the milestones: those passed and the
 * next one, so that a far one does not press the season flat.
 */
export function progressChart(
  history: Pick<History, 'flights' | 'time' | 'target' | 'milestones'>,
  days: { readonly opens: CalendarDate; readonly until: CalendarDate },
  words: ProgressWords,
): ProgressChart {
  const best = history.time.at(-1)?.value ?? 0;
  const dates = [days.opens, days.until, ...history.flights.map(({ flown }) => flown.date)].sort();
  const stepped = new Set(history.time.map(({ flight }) => flight));
  return {
    first: dates[0]!,
    last: dates.at(-1)!,
    steps: history.time.map(({ flight, value }) => ({ date: flight.flown.date, seconds: value })),
    others: history.flights
      .filter((flight) => !stepped.has(flight))
      .map(({ flown, seconds }) => ({ date: flown.date, seconds })),
    marks: levelsUpTo(best, history.target, history.milestones, words.mark),
    words,
  };
}

/** Where everything stands. Without a flight there are axes and marks only. */
export function layOutProgress({ first, last, steps, others, marks, words }: ProgressChart): ProgressLayout {
  const days = dayScale(first, last, frame.left, frame.right);
  const most = Math.max(0, ...steps.map(({ seconds }) => seconds), ...marks.map(({ seconds }) => seconds));
  const scale = linearScale(0, most, frame.bottom, frame.top, 5);
  const place = ({ date, seconds }: TimedDay): Point => ({
    x: tenth(days.at(date)),
    y: tenth(scale.at(seconds)),
  });
  const corners = steps.map(place);
  const stairs = stairsThrough(corners, tenth(days.at(last)));
  const top = corners.at(-1);
  const best: ProgressLayout['best'] =
    top === undefined
      ? null
      : { text: words.best(steps.at(-1)!.seconds), at: { x: frame.right, y: top.y - 8 }, anchor: 'end' };
  return {
    ...frame,
    up: { scale, label: words.seconds },
    across: {
      ticks: days.ticks.map((tick) => ({ x: days.at(tick.date), text: words.tick(tick) })),
      label: words.days(first, last),
    },
    stairs,
    steps: corners,
    others: distinct(others.map(place)),
    marks: placeLevels(marks, scale, frame, best === null ? [] : [boxOf(best)], boxesOf(stairs)),
    best,
  };
}

/** Level to the day of the next step, then up; level again to the end. A single flight on the last day is a dot. */
function stairsThrough(corners: readonly Point[], end: number): readonly Point[] {
  const top = corners.at(-1);
  if (top === undefined) return [];
  const stairs = corners.flatMap((corner, index) => {
    const before = corners[index - 1];
    return before === undefined ? [corner] : [{ x: corner.x, y: before.y }, corner];
  });
  return top.x < end ? [...stairs, { x: end, y: top.y }] : stairs;
}

/** The room of the staircase; each of its parts is level or upright. */
function boxesOf(stairs: readonly Point[]): readonly Box[] {
  return stairs.map((to, index) => {
    const from = stairs[index - 1] ?? to;
    return {
      left: Math.min(from.x, to.x) - 1,
      right: Math.max(from.x, to.x) + 1,
      top: Math.min(from.y, to.y) - 1,
      bottom: Math.max(from.y, to.y) + 1,
    };
  });
}

/** Flights that would be drawn over one another are drawn once, so that a chart of thousands stays small. */
function distinct(points: readonly Point[]): readonly Point[] {
  const seen = new Map(
    points.map(({ x, y }) => [`${Math.round(x)} ${Math.round(y)}`, { x: Math.round(x), y: Math.round(y) }]),
  );
  return [...seen.values()];
}
