import { enter as say } from '../../words/enter.ts';
import type { Control, Group } from './control.ts';

/** Keys whose values tell one part from another, in the order in which they are told. */
const telling = ['number', 'id', 'from', 'date', 'time', 'watches', 'count', 'rotation', 'file'];

/** What a part of a list is called: its number in the list, or its own, and what tells it from the others. */
export function itemTitle(what: string, item: Group, index: number): string {
  const texts = new Map(
    [...item.inSight, ...item.folded].map((control) => [String(control.path.at(-1)), textOf(control)]),
  );
  const number = texts.get('number') ?? '';
  const facts = telling
    .filter((key) => key !== 'number')
    .map((key) => texts.get(key) ?? '')
    .filter((text) => text !== '');
  const title = say.itemNumber(what, number === '' ? index + 1 : Number(number) || index + 1);
  return facts.length === 0 ? title : `${title}: ${facts.join(', ')}`;
}

function textOf(control: Control): string {
  if (control.kind === 'line' || control.kind === 'choice') return control.written;
  return control.kind === 'lines' ? control.written.join(' / ') : '';
}
