import type { Moment } from '../model/calendar.ts';

/** A moment as the content format writes it, such as `2027-05-09 18:40+01:00`: as much of it as was stated. */
export function momentText({ date, time, offset }: Moment): string {
  if (time === null) return date;
  return offset === null ? `${date} ${time}` : `${date} ${time}${offsetText(offset)}`;
}

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
