import { expect, it } from 'vitest';
import { parseQuantity } from '../../src/quantities/parse.ts';
import type { Kind } from '../../src/quantities/quantity.ts';

it('reads the quantities of a thousand entries in a moment', () => {
  const texts: readonly (readonly [string, Kind])[] = [
    ['3.20 m ± 5 mm', 'length'],
    ['10 ft 6 in', 'length'],
    ['15.4 g', 'mass'],
    ['61 mN·m', 'torque'],
    ['41.62 s', 'time'],
    ['14 °C', 'temperature'],
    ['54 x 10', 'turns'],
    ['1/8 in', 'length'],
    ['87.6 dm2', 'area'],
    ['38 %', 'share'],
  ];
  const started = process.cpuUsage().user;
  let read = 0;
  for (let round = 0; round < 6000; round++) {
    for (const [text, kind] of texts) read += parseQuantity(text, kind).ok ? 1 : 0;
  }
  expect(read).toBe(60_000);
  // Microseconds of processor time: 5 each is the aim, four times that the alarm.
  expect(process.cpuUsage().user - started).toBeLessThan(60_000 * 20);
});
