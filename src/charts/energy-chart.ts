import type { EnergyAccount, EnergyItem } from '../figures/energy-account.ts';
import { energyItems } from '../figures/energy-account.ts';
import { isPresent } from '../figures/figure.ts';
import { type ChartFrame, tenth } from './chart-parts.ts';

/** How a bar is drawn: what came in, what there was, what went for flying, what is assumed, what is left over, or lacking. */
export type BarKind = 'in' | 'off' | 'there' | 'used' | 'assumed' | 'rest' | 'beyond';

export interface EnergyBar {
  readonly item: EnergyItem;
  readonly kind: BarKind;
  /** J. */
  readonly from: number;
  readonly to: number;
  readonly u: number;
}

/** The account as bars that follow one another: what came in up to what there was, and how that was spent. */
export interface EnergyChart {
  readonly bars: readonly EnergyBar[];
  /** J: what there was to fly on. */
  readonly there: number;
}

export interface PlacedBar {
  readonly item: EnergyItem;
  readonly kind: BarKind;
  readonly left: number;
  readonly width: number;
  /** Of the bar; its words stand above it. */
  readonly top: number;
  /** ± at its end; null where it is hardly to be seen. */
  readonly whisker: { readonly from: number; readonly to: number } | null;
}

export interface EnergyLayout extends ChartFrame {
  readonly bars: readonly PlacedBar[];
  readonly barHeight: number;
  /** Where what there was ends, from the top of the bars to the bottom. */
  readonly there: number;
}

const rowHeight = 46;
const barHeight = 15;
const wordsHeight = 20;
const frame = { width: 480, left: 1, right: 479, top: 4 };
/** Less than this share left in the turns is not worth a bar. */
const leastLeft = 0.001;
/** A ± of less than this is hardly to be seen. */
const leastWhisker = 3;

/** Null where an item could not be worked out. */
export function energyChart(account: EnergyAccount): EnergyChart | null {
  const read = new Map<EnergyItem, { readonly value: number; readonly u: number }>();
  for (const item of energyItems) {
    const energy = account.get(item);
    if (!isPresent(energy)) return null;
    read.set(item, energy);
  }
  const value = (item: EnergyItem): number => read.get(item)!.value;
  const there = value('there');
  const inAll = value('stored') + value('height');
  const spent = value('aloft') + value('propeller');
  const bar = (item: EnergyItem, kind: BarKind, from: number, to: number): EnergyBar => ({
    item,
    kind,
    from: Math.min(from, to),
    to: Math.max(from, to),
    u: read.get(item)!.u,
  });
  return {
    there,
    bars: [
      bar('stored', 'in', 0, value('stored')),
      bar('height', 'in', value('stored'), inAll),
      ...(value('left') > leastLeft * there ? [bar('left', 'off', there, inAll)] : []),
      bar('there', 'there', 0, there),
      bar('aloft', 'used', 0, value('aloft')),
      bar('propeller', 'assumed', value('aloft'), spent),
      bar('rest', spent > there ? 'beyond' : 'rest', spent, there),
    ],
  };
}

/** Where every bar stands, one below the other on one scale of energy that begins at nothing. */
export function layOutEnergy({ bars, there }: EnergyChart): EnergyLayout {
  const most = Math.max(...bars.map(({ to, u }) => to + u));
  const least = Math.min(0, ...bars.map(({ from }) => from));
  const at = (joules: number): number =>
    frame.left + ((joules - least) / (most - least)) * (frame.right - frame.left);
  const bottom = frame.top + bars.length * rowHeight;
  return {
    ...frame,
    bottom,
    height: bottom + 4,
    barHeight,
    there: tenth(at(there)),
    bars: bars.map(({ item, kind, from, to, u }, index) => {
      const whisker = { from: Math.max(frame.left, at(to - u)), to: at(to + u) };
      return {
        item,
        kind,
        left: tenth(at(from)),
        width: Math.max(1, tenth(at(to) - at(from))),
        top: frame.top + index * rowHeight + wordsHeight,
        whisker:
          whisker.to - whisker.from < leastWhisker
            ? null
            : { from: tenth(whisker.from), to: tenth(whisker.to) },
      };
    }),
  };
}
