import { type BoardHolds, type BoardView, writeView } from './board-view.ts';

type Control = HTMLInputElement | HTMLSelectElement;

const choices = ['division', 'control', 'builder'] as const;
const lengths = ['spanFrom', 'spanTo'] as const;

/** What the controls above the board say and are told. */
export interface ViewControls {
  /** Calls `changed` with what was chosen; `typing` where more letters may follow. */
  readonly listen: (changed: (part: Partial<BoardView>, typing: boolean) => void, reset: () => void) => void;
  readonly show: (view: BoardView, shown: string) => void;
  readonly choicesOf: (name: (typeof choices)[number]) => ReadonlySet<string>;
  /** What a choice is called, such as the name of a division. */
  readonly nameOf: (name: (typeof choices)[number], value: string) => string;
  readonly announce: (sentence: string) => void;
}

/** Works the controls that the build wrote into a field set. */
export function viewControls(fields: HTMLFieldSetElement): ViewControls {
  const control = (name: string) => fields.querySelector<Control>(`[name="${name}"]`);
  const options = (name: string) => [
    ...fields.querySelectorAll<HTMLOptionElement>(`[name="${name}"] option`),
  ];
  const reset = fields.querySelector<HTMLButtonElement>('[name="reset"]');
  const shownText = fields.querySelector('.shown');
  const status = fields.querySelector('[role="status"]');

  const read = (changed: Control): Partial<BoardView> => {
    const name = choices.find((one) => one === changed.name);
    if (name !== undefined) return { [name]: changed.value === '' ? null : changed.value };
    const length = lengths.find((one) => one === changed.name);
    if (length === undefined) return { sought: changed.value };
    const metres = typedLength(changed.value, metresOfUnit(fields));
    changed.toggleAttribute('aria-invalid', metres === null && changed.value.trim() !== '');
    return { [length]: metres };
  };

  const showLengths = (view: BoardView) => {
    for (const name of lengths) {
      const field = control(name);
      const metres = view[name];
      if (field === null || typedLength(field.value, metresOfUnit(fields)) === metres) continue;
      field.value = metres === null ? '' : String(Number((metres / metresOfUnit(fields)).toPrecision(4)));
    }
  };

  let last: BoardView | null = null;
  new MutationObserver(() => last !== null && showLengths(last)).observe(document.documentElement, {
    attributeFilter: ['data-units'],
  });

  return {
    listen: (changed, resetAll) => {
      fields.addEventListener('input', ({ target }) => {
        if (target instanceof HTMLInputElement) changed(read(target), true);
        if (target instanceof HTMLSelectElement) changed(read(target), false);
      });
      reset?.addEventListener('click', () => {
        // The button goes away: whoever pressed it by key goes on from the first control.
        resetAll();
        control('sought')?.focus();
      });
    },
    show: (view, shown) => {
      last = view;
      for (const name of choices) {
        const field = control(name);
        if (field !== null) field.value = view[name] ?? '';
      }
      const sought = control('sought');
      if (sought !== null && sought.value !== view.sought) sought.value = view.sought;
      showLengths(view);
      if (reset !== null) reset.hidden = writeView({ ...view, full: false, picked: [] }) === '';
      if (shownText !== null) shownText.textContent = shown;
      fields.hidden = false;
    },
    choicesOf: (name) => new Set(options(name).flatMap(({ value }) => (value === '' ? [] : [value]))),
    nameOf: (name, value) => options(name).find((one) => one.value === value)?.textContent ?? value,
    announce: (sentence) => {
      if (status !== null) status.textContent = sentence;
    },
  };
}

/** How many metres the unit in force has, as the page says it. */
function metresOfUnit(fields: HTMLFieldSetElement): number {
  const system = document.documentElement.dataset.units ?? 'metric';
  return Number(fields.querySelector<HTMLElement>(`.${system}[data-metres]`)?.dataset.metres ?? 1);
}

/** Metres of what was typed, with a point or a comma; null where it is no length. */
function typedLength(text: string, metres: number): number | null {
  const value = Number.parseFloat(text.trim().replace(',', '.'));
  return value >= 0 && value < Infinity ? Number((value * metres).toPrecision(6)) : null;
}

/** What an address may ask for on this page. */
export function boardHolds(controls: ViewControls, entries: Iterable<string>): BoardHolds {
  return {
    divisions: controls.choicesOf('division'),
    builders: controls.choicesOf('builder'),
    controls: controls.choicesOf('control'),
    entries: new Set(entries),
  };
}
