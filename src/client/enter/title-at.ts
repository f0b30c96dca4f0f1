import { entry } from '../../entries/schema/entry.ts';
import { describedAt } from '../../entries/schema/field-at.ts';
import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { valueAt } from './value-at.ts';

/** How many of the maps around a field are named with it. */
const around = 2;

/** What a field is called where it does not stand: the part of the list it is in, what it belongs to, and its title. */
export function titleAt(written: Plain, path: Path): string {
  const item = path.findLastIndex(
    (step, at) => typeof step === 'number' && say.item[String(path[at - 1])] !== undefined,
  );
  const names = path
    .map((_, at) => at + 1)
    .filter((length) => length > item + 1 && typeof path[length - 1] === 'string')
    .map((length) => describedAt(entry, path.slice(0, length))?.title ?? String(path[length - 1]))
    .slice(-around);
  const [first = '', ...rest] = item < 0 ? names : [itemName(written, path.slice(0, item + 1)), ...names];
  return [first, ...rest.map((name) => name.charAt(0).toLowerCase() + name.slice(1))].join(', ');
}

/** Flights go by their own number, other parts by their place. */
function itemName(written: Plain, item: Path): string {
  const own = Number(valueAt(written, [...item, 'number']));
  return say.itemNumber(say.item[String(item.at(-2))] ?? '', own > 0 ? own : Number(item.at(-1)) + 1);
}
