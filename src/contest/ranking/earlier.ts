import type { CalendarDate, Moment } from '../../model/calendar.ts';
import { instantOf } from '../../timing/instant.ts';

/** A moment ready to be compared many times. */
interface Timed {
  readonly date: CalendarDate;
  /** Seconds; null where time or offset is not stated. */
  readonly instant: number | null;
}

function timed(moment: Moment): Timed {
  return { date: moment.date, instant: instantOf(moment) };
}

/** Negative where the first was earlier, 0 where that cannot be told: instants where both have one, else dates. */
function compare(a: Timed, b: Timed): number {
  if (a.instant !== null && b.instant !== null) return a.instant - b.instant;
  return a.date < b.date ? -1 : a.date > b.date ? 1 : 0;
}

/** When a score was complete: the latest of its flights' moments. Their order does not matter. */
export function latest(moments: readonly [Moment, ...Moment[]]): Moment {
  return [...moments]
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.written < b.written ? -1 : 1))
    .reduce((last, moment) => (compare(timed(moment), timed(last)) >= 0 ? moment : last));
}

/**
 * Parts items by when something happened, the earlier class first. Comparing dates here and instants there can run in
 * a circle (a moment without an offset is level with two that differ): what hangs together so stays in one class. Any
 * two can be compared, so an item of an earlier class precedes more of the others than any item of a later class.
 */
export function partByMoment<T>(
  items: readonly T[],
  momentOf: (item: T) => Moment,
): readonly (readonly T[])[] {
  const all = items.map((item) => ({ item, moment: timed(momentOf(item)), lead: 0 }));
  for (const one of all)
    one.lead = all.reduce((sum, other) => sum - Math.sign(compare(one.moment, other.moment)), 0);
  all.sort((a, b) => b.lead - a.lead);
  const classes: T[][] = [];
  let open: typeof all = [];
  all.forEach((one, position) => {
    open.push(one);
    const rest = all.slice(position + 1);
    if (!open.every((early) => rest.every((late) => compare(early.moment, late.moment) < 0))) return;
    classes.push(open.map(({ item }) => item));
    open = [];
  });
  return classes;
}
