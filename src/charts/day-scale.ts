import type { CalendarDate } from '../model/calendar.ts';
import { dayNumber } from '../timing/instant.ts';

/** A tick of an axis of days: the first of a month, or a day where a season is too short for that. */
export interface DayTick {
  readonly date: CalendarDate;
  readonly names: 'month' | 'day';
}

/** Which day lies where, with the ticks of its axis. */
export interface DayScale {
  readonly ticks: readonly DayTick[];
  readonly at: (date: CalendarDate) => number;
}

/** In months; the first that gives few enough ticks is taken. */
const steps = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 6000, 12_000];
const mostTicks = 7;

/**
 * A scale from one day to another. A season of one single day lies in the middle.
 *
 * @param left where the first day lies in the drawing
 * @param right where the last one lies
 */
export function dayScale(first: CalendarDate, last: CalendarDate, left: number, right: number): DayScale {
  const low = dayNumber(first);
  const days = dayNumber(last) - low;
  return {
    ticks: monthTicks(first, last) ?? dayTicks(first, last),
    at: (date) => (days > 0 ? left + ((dayNumber(date) - low) / days) * (right - left) : (left + right) / 2),
  };
}

/** The first days of months that divide the year evenly; null where fewer than two of them lie in between. */
function monthTicks(first: CalendarDate, last: CalendarDate): readonly DayTick[] | null {
  const start = monthNumber(first) + (first.endsWith('-01') ? 0 : 1);
  const end = monthNumber(last);
  const step = steps.find((months) => (end - start) / months < mostTicks) ?? 12_000;
  const months: number[] = [];
  for (let month = Math.ceil(start / step) * step; month <= end; month += step) months.push(month);
  return months.length < 2 ? null : months.map((month) => ({ date: firstOf(month), names: 'month' }));
}

function dayTicks(first: CalendarDate, last: CalendarDate): readonly DayTick[] {
  return [...new Set([first, last])].map((date) => ({ date, names: 'day' }));
}

/** Months since January of the year 0. */
function monthNumber(date: CalendarDate): number {
  const [year = 0, month = 1] = date.split('-').map(Number);
  return year * 12 + month - 1;
}

function firstOf(month: number): CalendarDate {
  const year = String(Math.floor(month / 12)).padStart(4, '0');
  return `${year}-${String((month % 12) + 1).padStart(2, '0')}-01`;
}
