import { boardView as say } from '../../words/board-view.ts';

/** A button below a long board for the rows that are not listed yet; gives a function that says how many they are. */
export function moreRows(table: HTMLTableElement, showAll: () => void): (count: number) => void {
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'more-rows';
  button.addEventListener('click', showAll);
  return (count) => {
    if (count > 0) {
      button.textContent = say.more(count);
      table.parentElement?.after(button);
    } else button.remove();
  };
}
