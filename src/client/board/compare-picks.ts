import { boardView as say } from '../../words/board-view.ts';
import { mostPicked } from './board-view.ts';
import type { TableLine } from './table-lines.ts';

/**
 * Puts a box to tick into every row and a line below the table that leads to the page which sets the ticked aircraft
 * side by side. Gives a function that shows what is ticked.
 */
export function comparePicks(
  table: HTMLTableElement,
  lines: readonly TableLine[],
  /** `challenge/entry` of each ticked aircraft is added to the address. */
  page: { readonly address: string; readonly challenge: string },
  current: () => readonly string[],
  choose: (picked: readonly string[]) => void,
): (picked: readonly string[]) => void {
  const boxes = new Map<string, HTMLInputElement>();
  for (const line of lines) boxes.set(line.entry, boxIn(line));
  const head = table.querySelector<HTMLElement>('thead .pick');
  if (head !== null) head.hidden = false;
  const across = table.querySelector<HTMLTableCellElement>('.target-line th');
  if (across !== null) across.colSpan += 1;
  table.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const others = current().filter((entry) => entry !== target.value);
    choose(target.checked ? [...others, target.value] : others);
  });

  const bar = document.createElement('div');
  bar.className = 'picks';
  bar.hidden = true;
  const told = document.createElement('p');
  told.className = 'told';
  const go = document.createElement('a');
  go.className = 'go';
  const clear = document.createElement('button');
  clear.type = 'button';
  clear.textContent = say.clearPicks;
  clear.addEventListener('click', () => {
    const [first] = current();
    choose([]);
    boxes.get(first ?? '')?.focus();
  });

  return (picked) => {
    const names = picked.map((entry) => lines.find((line) => line.entry === entry)?.name ?? entry);
    const full = picked.length >= mostPicked;
    for (const [entry, box] of boxes) {
      box.checked = picked.includes(entry);
      box.disabled = full && !box.checked;
    }
    if (picked.length > 0 && !bar.isConnected) {
      bar.append(told, go, clear);
      table.parentElement?.after(bar);
    }
    bar.hidden = picked.length === 0;
    told.textContent = say.picked(names, full ? mostPicked : null);
    go.hidden = picked.length < 2;
    go.textContent = say.goCompare(picked.length);
    go.href = `${page.address}?of=${picked.map((entry) => `${page.challenge}/${entry}`).join(',')}`;
  };
}

function boxIn({ row, entry, name, comparable }: TableLine): HTMLInputElement {
  const cell = row.insertCell();
  cell.className = 'pick small';
  cell.dataset.label = say.compare;
  const box = document.createElement('input');
  box.type = 'checkbox';
  box.value = entry;
  box.setAttribute('aria-label', say.pick(name));
  // A label around it makes the box a larger target than it looks.
  const target = document.createElement('label');
  target.append(box);
  if (comparable) cell.append(target);
  return box;
}
