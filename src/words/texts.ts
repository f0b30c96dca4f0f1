import type { CalendarDate } from '../model/calendar.ts';

export { listed } from '../contest/ranking/listed.ts';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A date in words, such as "9 May 2027" or "May 2027"; anything that is neither stays as it was written. */
export function dateInWords(date: CalendarDate): string {
  const [year, month, day] = date.split('-');
  const name = months[Number(month) - 1];
  if (year === undefined || name === undefined) return date;
  return day === undefined ? `${name} ${year}` : `${Number(day)} ${name} ${year}`;
}

const shortMonths = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The month of a date for the axis of a chart, such as "Mar"; anything that has none stays as it was written. */
export function shortMonth(date: CalendarDate): string {
  return shortMonths[Number(date.slice(5, 7)) - 1] ?? date;
}

/** A date for the axis of a chart, such as "9 May"; "May" where its day is not told. */
export function shortDate(date: CalendarDate): string {
  const day = date.slice(8, 10);
  return day === '' ? shortMonth(date) : `${Number(day)} ${shortMonth(date)}`;
}

/** "1 flight", "2 flights". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
