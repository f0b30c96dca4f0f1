import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { html } from '../compare/html.ts';
import type { FormView } from './form-view.ts';
import { idOf } from './id-of.ts';
import { newName } from './new-name.ts';
import { nextNumber } from './next-number.ts';
import { titleAt } from './title-at.ts';
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

/** Takes a part out of its list, with a way to take that back; the cursor goes to where one would add another. */
export function removePart(view: FormView, writer: Writer, item: Path): void {
  const list = item.slice(0, -1);
  const place = Number(item.at(-1));
  const wasWritten = place < countAt(writer.plain(), list);
  const title = titleAt(writer.plain(), item);
  if (wasWritten) writer.put(item, null);
  else view.end(list);
  writer.redraw();
  const add = document.getElementById(idOf(list, 'add'));
  if (wasWritten) add?.before(takingBack(title, item));
  add?.focus();
  writer.tell(say.removed(title));
}

/** Where a part was: what became of it, until something else is changed. */
function takingBack(title: string, item: Path): HTMLElement {
  const told = document.createElement('p');
  told.className = 'removed';
  told.innerHTML =
    html`${say.removed(title)} <button type="button" data-put-back="${JSON.stringify(item)}">${say.takeBack}</button>`.text;
  return told;
}

/** Leads on after a text was put under a name of the builder's own: to what is still empty of the next. */
export function addNamed(map: Path): void {
  const boxes = newName(map);
  const isHalf = boxes !== null && boxes.name.value.trim() !== '';
  (isHalf ? boxes.value : boxes?.name)?.focus();
}

/** Puts a value that was offered in its field, and the cursor there. */
export function takeOffer(view: FormView, writer: Writer, path: Path, value: Plain): void {
  writer.put(path, value);
  writer.redraw();
  view.reveal(path);
}
