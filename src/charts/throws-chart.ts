import { meanOfThrows } from '../flight/glide-throws.ts';
import type { CalendarDate } from '../model/calendar.ts';
import type { Glide } from '../model/entry.ts';
import { type ChartFrame, tenth } from './chart-parts.ts';
import type { MarkKind } from './flight-marks.ts';
import { legibleTicks } from './legible-ticks.ts';
import type { OtherUnit } from './line-chart.ts';
import { linearScale, type Scale, scaleInUnit } from './scale.ts';
import type { Point } from './thinned.ts';
import { multiples, tickStep } from './ticks.ts';

/** One throw that tells a glide ratio. */
export interface ShownThrow {
  readonly date: CalendarDate | null;
  /** Behind the leading edge, m; null where the throw does not say. */
  readonly balance: number | null;
  readonly ratio: number;
  readonly u: number;
  /** A throw that went cleanly, or does not say how it went, is a full mark. */
  readonly kind: MarkKind;
}

/** The words of the chart. */
export interface ThrowsWords {
  readonly ratio: string;
  readonly balance: string;
  readonly order: string;
  readonly day: (date: CalendarDate | null) => string;
}

export interface ThrowsLayout extends ChartFrame {
  readonly up: { readonly scale: Scale; readonly label: string };
  readonly across: AxisAcross;
  /** The axis across in the other system of units. */
  readonly imperial: AxisAcross | null;
  readonly marks: readonly (Point & { readonly kind: MarkKind })[];
  readonly bars: readonly { readonly x: number; readonly top: number; readonly bottom: number }[];
}

interface AxisAcross {
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  readonly label: string;
}

const frame: ChartFrame = { width: 480, height: 320, left: 48, right: 454, top: 34, bottom: 266 };
const millimetres = 1000;

/**
 * The throws that tell height and distance, in the order of their dates; those without a date come first, as in the list
 * beside the chart. The ± is that of a single throw, whatever its readings promise.
 */
export function shownThrows(glides: readonly Glide[]): readonly ShownThrow[] {
  return glides
    .flatMap(({ date, balance, distance, height, behaviour }): ShownThrow[] => {
      if (distance === null || height === null || distance.value <= 0 || height.value <= 0) return [];
      const alone = meanOfThrows([{ over: distance, under: height }])!;
      return [
        {
          date,
          balance: balance?.kind === 'length' ? balance.value : null,
          ratio: alone.mean,
          u: Math.hypot(alone.ofReadings, alone.beyondReadings),
          kind: behaviour.every((how) => how === 'clean') ? 'accepted' : 'provisional',
        },
      ];
    })
    .sort((a, b) => order(a.date, b.date));
}

/** True where every throw says its balance and the balance was moved: the throws then stand at their balance. */
export function balanceMoved(throws: readonly ShownThrow[]): boolean {
  const places = new Set(throws.map(({ balance }) => balance));
  return !places.has(null) && places.size > 1;
}

/** Where everything stands: at the balance of each throw where that was moved, else evenly in their order. */
export function layOutThrows(
  throws: readonly ShownThrow[],
  words: ThrowsWords,
  imperial: OtherUnit,
): ThrowsLayout {
  const scale = linearScale(
    0,
    Math.max(0, ...throws.map(({ ratio, u }) => ratio + u)),
    frame.bottom,
    frame.top,
    5,
  );
  const moved = balanceMoved(throws);
  const balance = balanceScale(throws.map((one) => one.balance ?? 0));
  const width = (frame.right - frame.left) / throws.length;
  const places = throws.map((one, index) =>
    tenth(moved ? balance.at(millimetres * (one.balance ?? 0)) : frame.left + (index + 0.5) * width),
  );
  return {
    ...frame,
    up: { scale, label: words.ratio },
    across: moved
      ? { ticks: ticksOf(balance), label: words.balance }
      : { ticks: daysOf(throws, places, words), label: words.order },
    imperial: moved ? { ticks: ticksOf(scaleInUnit(balance, imperial.per, 5)), label: imperial.label } : null,
    marks: throws.map(({ ratio, kind }, index) => ({ x: places[index]!, y: tenth(scale.at(ratio)), kind })),
    bars: throws.map(({ ratio, u }, index) => ({
      x: places[index]!,
      top: tenth(scale.at(ratio + u)),
      bottom: tenth(scale.at(Math.max(0, ratio - u))),
    })),
  };
}

/** In mm, from the tick below the foremost balance to the one above the rearmost: what matters is the shift. */
function balanceScale(balances: readonly number[]): Scale {
  const low = millimetres * Math.min(...balances);
  const high = millimetres * Math.max(...balances);
  const step = tickStep(high > low ? high - low : 1, 4);
  const start = Math.floor(low / step) * step;
  return linearScale(multiples(step, start, start)[0] ?? start, high, frame.left, frame.right, 4);
}

function ticksOf(scale: Scale): AxisAcross['ticks'] {
  return scale.ticks.map(({ value, text }) => ({ x: scale.at(value), text }));
}

/** The date under the first throw of each day, where there is room. */
function daysOf(
  throws: readonly ShownThrow[],
  places: readonly number[],
  words: ThrowsWords,
): AxisAcross['ticks'] {
  return legibleTicks(
    throws.flatMap(({ date }, index) =>
      index > 0 && throws[index - 1]!.date === date
        ? []
        : [{ x: places[index]!, text: words.day(date), first: index === 0 }],
    ),
  );
}

function order(a: CalendarDate | null, b: CalendarDate | null): number {
  if (a === b) return 0;
  if (a === null) return -1;
  return b === null || a > b ? 1 : -1;
}
