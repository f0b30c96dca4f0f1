import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { withBladeAngle } from './blade-angle.ts';
import { newName } from './new-name.ts';
import { isPerMotor } from './per-motor.ts';
import { splitItems } from './split-items.ts';

/** What stands in a field of the page, as it is to be written; null as value for nothing. */
export interface TypedIn {
  readonly path: Path;
  readonly value: Plain | null;
  /** Whether it may only be taken once the field is left: other fields appear or change with it. */
  readonly whenLeft?: boolean;
  /** Why it cannot be taken yet; it stays in its field. */
  readonly refused?: string;
}

/** Reads a field of the form; null where the element is none that stands for a field of the text. */
export function typedIn(field: Element, form: ParentNode): TypedIn | null {
  if (field instanceof HTMLInputElement && field.dataset.among !== undefined) {
    const ticked = [...form.querySelectorAll<HTMLInputElement>('input[data-among]:checked')];
    const words = ticked
      .filter(({ dataset }) => dataset.among === field.dataset.among)
      .map(({ value }) => value);
    return { path: JSON.parse(field.dataset.among), value: words.length === 0 ? null : words };
  }
  if (
    !(field instanceof HTMLInputElement) &&
    !(field instanceof HTMLSelectElement) &&
    !(field instanceof HTMLTextAreaElement)
  )
    return null;
  const map = field.closest<HTMLElement>('[data-name]')?.dataset.name;
  if (map !== undefined) return typedInNewName(JSON.parse(map));
  if (field.dataset.put === undefined) return null;
  const path: Path = JSON.parse(field.dataset.put);
  if (field instanceof HTMLInputElement && field.type === 'checkbox')
    return { path, value: field.checked ? field.value : null };
  const boxes = field.closest('fieldset.several')?.querySelectorAll<HTMLInputElement>('input[data-put]');
  if (boxes !== undefined) {
    const texts = [...boxes].map(({ value }) => plainly(value));
    return typedInList(path, texts);
  }
  const written = plainly(field.value);
  if (written === '') return { path, value: null };
  return { path, value: path.at(-1) === 'pitch' ? withBladeAngle(written) : written };
}

/**
 * What is to be written for one box of a list: the item alone, or the whole list where several were typed into one box.
 *
 * @param item the path of the box
 * @param texts what stands in the boxes of the list, in their order
 */
export function typedInList(item: Path, texts: readonly string[]): TypedIn {
  const list = item.slice(0, -1);
  const place = Number(item.at(-1));
  const typed = texts[place] ?? '';
  const items = splitItems(typed);
  const all = texts.flatMap((text, box) => (box === place ? items : text === '' ? [] : [text]));
  if (items.length > 1) return { path: list, value: all, whenLeft: true };
  if (isPerMotor(list)) {
    const last = texts.findLastIndex((text) => text !== '');
    if (texts.slice(0, last).includes('')) return { path: item, value: typed, refused: say.motorsInOrder };
    if (last > 0) return { path: list, value: all };
  }
  return { path: item, value: items[0] ?? null };
}

/** A text under a name of its own, once both are there. */
function typedInNewName(map: Path): TypedIn | null {
  const boxes = newName(map);
  const [key, value] = boxes === null ? ['', ''] : [plainly(boxes.name.value), plainly(boxes.value.value)];
  return key === '' || value === '' ? null : { path: [...map, key], value, whenLeft: true };
}

function plainly(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
