import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import type { FormView } from './form-view.ts';
import { idOf } from './id-of.ts';
import { nextNumber } from './next-number.ts';
import { countAt, valueAt } from './value-at.ts';

/** What adding and removing parts needs of the form. */
export interface Writer {
  /** The fields as they are written. */
  readonly plain: () => Plain;
  readonly put: (path: Path, value: Plain | null) => void;
  readonly redraw: () => void;
  /** A part has just been added. */
  readonly begin: (part: Path) => void;
  readonly tell: (sentence: string) => void;
}

/** Puts an empty part behind the last of a list, and the cursor into it. */
export function addPart(view: FormView, writer: Writer, list: Path): void {
  const item = [...list, countAt(writer.plain(), list)];
  view.unfold(item);
  writer.begin(item);
  if (list.at(-1) === 'flights') {
    // A flight has its number from the start; another part is written with the first of its fields.
    writer.put([...item, 'number'], nextNumber(valueAt(writer.plain(), list)));
    view.reveal([...item, 'date']);
    return;
  }
  view.begin(list);
  writer.redraw();
  view.reveal(item);
}

/** Takes a part out of its list; the cursor goes to where one would add another. */
export function removePart(view: FormView, writer: Writer, item: Path): void {
  const list = item.slice(0, -1);
  const place = Number(item.at(-1));
  if (place < countAt(writer.plain(), list)) writer.put(item, null);
  else view.end(list);
  writer.redraw();
  document.getElementById(idOf(list, 'add'))?.focus();
  writer.tell(say.removed(say.itemNumber(say.item[String(list.at(-1))] ?? '', place + 1)));
}

/** Puts a text under a name of the builder's own; the cursor goes to what is still empty. */
export function addNamed(writer: Writer, map: Path): void {
  const id = idOf(map, 'new');
  const [name, value] = ['name', 'value'].map((part) => document.getElementById(`${id}-${part}`));
  if (!(name instanceof HTMLInputElement) || !(value instanceof HTMLInputElement)) return;
  const [key, text] = [name.value.trim(), value.value.trim()];
  if (key !== '' && text !== '') writer.put([...map, key], text);
  const next = key !== '' && text === '' ? value : document.getElementById(`${id}-name`);
  next?.focus();
}

/** Puts a value that was offered in its field, and the cursor there. */
export function takeOffer(view: FormView, writer: Writer, path: Path, value: Plain): void {
  writer.put(path, value);
  writer.redraw();
  view.reveal(path);
}
