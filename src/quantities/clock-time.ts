import { faultOf, shown } from './fault.ts';
import type { Reading, Unread } from './reading.ts';

const clock = /^([+-]?)(\d+):(\d\d)(?:[.,](\d+))?$/;

/**
 * A time as minutes and seconds, `2:05.4`. Misprints such as `9:94` and `8:000` are refused: nobody can tell what was
 * meant. `plain` is in plain typing.
 */
export function readClockTime(text: string, plain: string): Reading | Unread {
  const match = clock.exec(plain);
  const quoted = `"${shown(text)}"`;
  if (match === null) {
    const message = `${quoted} cannot be read as minutes and seconds; write two digits after the colon, such as "2:05.4".`;
    return { ok: false, fault: faultOf('not-a-quantity', text, 'time', message) };
  }
  const [, sign, minutes, seconds, places = ''] = match;
  if (Number(seconds) > 59) {
    const message = `${quoted} is impossible: the seconds after a colon go from 00 to 59.`;
    return { ok: false, fault: faultOf('impossible-value', text, 'time', message) };
  }
  const whole = Number(minutes) * 60 + Number(seconds);
  // Joined as text, so that 1:02.4 is exactly the number 62.4.
  const value = Number(places === '' ? whole : `${whole}.${places}`);
  return {
    ok: true,
    value: (sign === '-' ? -value : value) + 0,
    resolution: Number(`1e-${places.length}`),
    nominal: false,
    hasUnit: true,
  };
}
