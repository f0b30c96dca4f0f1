import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import type { Html } from '../compare/html.ts';
import { html } from '../compare/html.ts';
import { controlMarkup, fold, inside } from './control-markup.ts';
import { idOf } from './id-of.ts';
import { reading } from './reading.ts';
import { formOf, type Section } from './sections.ts';
import { structureOf } from './structure-of.ts';
import { titlesOf } from './titles-of.ts';

/** The fields on the page. They are drawn anew only where other fields are to be there; focus and folds stay. */
export interface FormView {
  /** Shows the fields as they are written; `anew` where their values changed elsewhere than in the fields. */
  readonly show: (plain: Plain, anew: boolean) => void;
  /** Shows an empty part behind the last one of a list. */
  readonly begin: (list: Path) => void;
  /** Whether the list shows a part that is not written yet; from then on it does not. */
  readonly end: (list: Path) => boolean;
  /** Opens an item of a list, or closes all. */
  readonly unfold: (item: Path) => void;
  readonly foldAll: () => void;
  /** Brings a field, or what is nearest to it, into view and puts the cursor there. */
  readonly reveal: (path: Path) => void;
}

export function formView(form: HTMLElement, plainNow: () => Plain): FormView {
  const unfolded = new Set<string>([idOf(['motors', 0], 'item')]);
  const begun = new Set<string>();
  const drawn = new Map<string, string>();
  let composed: EventTarget | null = null;

  function show(plain: Plain, anew: boolean): void {
    const sections = formOf(plain, begun);
    keepingFocus(() => {
      for (const section of sections) {
        const box = form.querySelector<HTMLElement>(`[data-part="${section.id}"]`);
        // Letters that are still being composed would be cut off.
        if (box === null || (composed instanceof Node && box.contains(composed))) continue;
        const structure = `${structureOf(section)} ${[...unfolded].sort().join(' ')}`;
        if (!anew && drawn.get(section.id) === structure) continue;
        drawn.set(section.id, structure);
        keepingNewNames(box, () => {
          box.innerHTML = sectionMarkup(section).text;
        });
      }
    });
    for (const [id, title] of titlesOf(sections)) {
      const place = document.getElementById(id)?.querySelector('.title');
      if (place != null && place.textContent !== title) place.textContent = title;
    }
    for (const { id, folded, inSight } of sections) {
      if (!folded) continue;
      const count = form.querySelector(`#part-${id} > summary .count`);
      if (count !== null)
        count.textContent = inSight.some(({ path }) => isThere(plain, path)) ? say.filledInPart : '';
    }
    showReadings();
  }

  function sectionMarkup({ inSight, more }: Section): Html {
    const [only] = inSight;
    // A part of one group needs no second heading.
    const main =
      inSight.length === 1 && only?.kind === 'group'
        ? html`<div class="problems" id="${idOf(only.path, 'problems')}"></div>${inside(only, unfolded)}`
        : html`<div class="fields">${inSight.map((control) => controlMarkup(control, unfolded))}</div>`;
    return html`${main}${fold([], more, unfolded)}`;
  }

  function showReadings(): void {
    for (const field of form.querySelectorAll<HTMLInputElement>('input[data-put], textarea[data-put]')) {
      const path: Path = JSON.parse(field.dataset.put ?? '[]');
      const place = document.getElementById(idOf(path, 'reading'));
      if (place === null) continue;
      const read = reading(path, field.value.trim());
      const markup =
        read === null
          ? ''
          : html`${say.understood} ${read.metric === read.imperial ? html`${read.metric}` : html`<span class="metric">${read.metric}</span><span class="imperial">${read.imperial}</span>`}`
              .text;
      if (place.innerHTML !== markup) place.innerHTML = markup;
    }
  }

  form.addEventListener('compositionstart', ({ target }) => {
    composed = target;
  });
  form.addEventListener('compositionend', () => {
    composed = null;
  });

  // Toggling is told late and does not bubble; what was drawn open tells it, too.
  form.addEventListener(
    'toggle',
    ({ target }) => {
      if (!(target instanceof HTMLDetailsElement) || !/^at-/.test(target.id)) return;
      if (target.open === unfolded.has(target.id)) return;
      if (target.open) unfolded.add(target.id);
      else unfolded.delete(target.id);
      show(plainNow(), false);
      form.dispatchEvent(new CustomEvent('redrawn'));
    },
    true,
  );

  function reveal(path: Path): void {
    const section = form.querySelector<HTMLDetailsElement>(`details.part:has([data-part="${partOf(path)}"])`);
    if (section !== null) section.open = true;
    for (let next = foldOnTheWay(path); next !== null; next = foldOnTheWay(path)) {
      unfolded.add(next);
      show(plainNow(), false);
    }
    form.dispatchEvent(new CustomEvent('redrawn'));
    const field = nearestField(path);
    field?.focus({ preventScroll: true });
    field?.scrollIntoView({ block: 'center' });
  }

  function foldOnTheWay(path: Path): string | null {
    for (let length = 0; length <= path.length; length += 1) {
      const part = path.slice(0, length);
      for (const id of [idOf(part, 'item'), idOf(part, 'more')]) {
        const found = document.getElementById(id);
        if (!(found instanceof HTMLDetailsElement) || unfolded.has(id)) continue;
        if (id === idOf(part, 'item') || holds(found, path)) return id;
      }
    }
    return null;
  }

  function nearestField(path: Path): HTMLElement | null {
    for (let length = path.length; length > 0; length -= 1) {
      const exact = document.getElementById(idOf(path.slice(0, length)));
      if (exact !== null) return exact;
      const room = document.getElementById(idOf(path.slice(0, length), 'problems'));
      const around = room?.parentElement;
      const inRoom =
        around?.querySelector<HTMLElement>('input, select, textarea') ??
        around?.querySelector<HTMLElement>('button, summary');
      if (inRoom != null) return inRoom;
    }
    return null;
  }

  return {
    show,
    begin: (list) => {
      begun.add(idOf(list));
    },
    end: (list) => begun.delete(idOf(list)),
    unfold: (item) => {
      unfolded.add(idOf(item, 'item'));
    },
    foldAll: () => {
      unfolded.clear();
      begun.clear();
      unfolded.add(idOf(['motors', 0], 'item'));
    },
    reveal,
  };
}

function partOf([key]: Path): string {
  const found = formOf({}, new Set()).find(({ inSight, more }) =>
    [...inSight, ...more].some(({ path }) => path[0] === key),
  );
  return found?.id ?? 'aircraft';
}

function holds(fold: HTMLDetailsElement, path: Path): boolean {
  const held: Path[] = JSON.parse(fold.dataset.holds ?? '[]');
  return held.some((one) => one.every((step, at) => path[at] === step));
}

function isThere(plain: Plain, [key]: Path): boolean {
  return typeof plain === 'object' && key !== undefined && Object.hasOwn(plain, key);
}

/** Draws, then puts back what is not in the file yet, as long as it is not. */
function keepingNewNames(box: HTMLElement, draw: () => void): void {
  const rows = [...box.querySelectorAll<HTMLElement>('.new-name')].map((row) =>
    [...row.querySelectorAll('input')].map(({ id, value }) => ({ id, value })),
  );
  draw();
  for (const row of rows) {
    if (row.every(({ value }) => value.trim() !== '')) continue;
    for (const { id, value } of row) {
      const field = document.getElementById(id);
      if (field instanceof HTMLInputElement) field.value = value;
    }
  }
}

/** Draws, then puts the cursor where it was, in the field that stands in the place of the old one. */
function keepingFocus(draw: () => void): void {
  const before = document.activeElement;
  const id = before?.id ?? '';
  const isText = before instanceof HTMLInputElement && before.type === 'text';
  const [from, to] =
    isText || before instanceof HTMLTextAreaElement
      ? [before.selectionStart, before.selectionEnd]
      : [null, null];
  draw();
  if (id === '' || before?.isConnected === true) return;
  const after = document.getElementById(id);
  after?.focus({ preventScroll: true });
  const takesText =
    (after instanceof HTMLInputElement && after.type === 'text') || after instanceof HTMLTextAreaElement;
  if (takesText && from !== null) after.setSelectionRange(from, to);
}
