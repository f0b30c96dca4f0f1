import type { Kind } from './quantity.ts';

const range = /^(\d+(?:\.\d+)?) ?(?:-|to) ?(\d+(?:\.\d+)?) ?(\D*)$/;
const fraction = /^(?:\d+ )?\d+\/\d+$/;
const percentOf = /^(\d+(?:\.\d+)?) ?% ?[a-z].*$/i;

/**
 * What somebody may have meant who wrote a text that is no quantity; undefined where there is nothing to go by. A range is told by
 * its middle and, as a rectangular distribution, a twelfth of its width squared (JCGM 100:2008, 4.3.7); a fraction without a
 * unit is one of an inch; calm is the lowest step of the Beaufort scale.
 *
 * @param plain in plain typing
 */
export function meantText(plain: string, kind: Kind): string | undefined {
  if (kind === 'speed' && plain.toLowerCase() === 'calm') return '0 m/s';
  if (kind === 'length' && fraction.test(plain)) return `${plain} in`;
  if (kind === 'share') return percentOf.test(plain) ? plain.replace(percentOf, '$1 %') : undefined;
  const found = range.exec(plain);
  if (found === null) return undefined;
  const [low, high] = [Number(found[1]), Number(found[2])];
  if (low >= high) return undefined;
  const unit = found[3] === '' ? '' : ` ${found[3]}`;
  const middle = Number(((low + high) / 2).toPrecision(12));
  return `${middle}${unit} ± ${Number(((high - low) / Math.sqrt(12)).toPrecision(2))}${unit}`;
}
