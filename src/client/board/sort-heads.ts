import type { SortColumn, SortOrder } from './board-view.ts';

/** Columns of letters and places begin small, all others with the largest. */
const smallestFirst: ReadonlySet<SortColumn> = new Set(['place', 'aircraft', 'builders']);

/** Puts a button into every head of a table; gives a function that marks the column in force. */
export function sortHeads(
  table: HTMLTableElement,
  current: () => SortOrder,
  choose: (sort: SortOrder) => void,
): (sort: SortOrder) => void {
  const heads = [...table.querySelectorAll<HTMLElement>('thead th[data-column]')];
  for (const head of heads) {
    const column = head.dataset.column as SortColumn;
    const button = document.createElement('button');
    button.type = 'button';
    button.append(...head.childNodes);
    head.append(button);
    button.addEventListener('click', () => {
      const before = current();
      const largestFirst = before.column === column ? !before.largestFirst : !smallestFirst.has(column);
      choose({ column, largestFirst });
    });
  }
  table.classList.add('sortable');
  return ({ column, largestFirst }) => {
    for (const head of heads) {
      if (head.dataset.column === column)
        head.setAttribute('aria-sort', largestFirst ? 'descending' : 'ascending');
      else head.removeAttribute('aria-sort');
    }
  };
}

/** Whether a column holds letters, which are sorted from A to Z rather than by size. */
export function isOfLetters(column: SortColumn): boolean {
  return column === 'aircraft' || column === 'builders';
}
