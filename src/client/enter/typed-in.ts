import type { Path, Plain } from '../../entries/source/source.ts';
import { withBladeAngle } from './blade-angle.ts';

/** What stands in a field of the page, as it is to be written; null as value for nothing. */
export interface TypedIn {
  readonly path: Path;
  readonly value: Plain | null;
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
  if (field.dataset.put === undefined) return null;
  const path: Path = JSON.parse(field.dataset.put);
  if (field instanceof HTMLInputElement && field.type === 'checkbox')
    return { path, value: field.checked ? field.value : null };
  const written = field.value.replace(/\s+/g, ' ').trim();
  if (written === '') return { path, value: null };
  return { path, value: path.at(-1) === 'pitch' ? withBladeAngle(written) : written };
}
