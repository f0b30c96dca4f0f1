import { boardView as say } from '../../words/board-view.ts';
import { type BoardView, firstRows, readView, sameOrder, wholeBoard, writeView } from './board-view.ts';
import { comparePicks } from './compare-picks.ts';
import { divisionRows, placeWriter } from './division-places.ts';
import { fittingLines } from './fitting-lines.ts';
import { moreRows } from './more-rows.ts';
import { isOfLetters, sortHeads } from './sort-heads.ts';
import { sortedLines } from './sorted-lines.ts';
import { tableArranger } from './table-arranger.ts';
import { tableLines } from './table-lines.ts';
import { boardHolds, viewControls } from './view-controls.ts';

/** While letters are being typed, the address and the screen reader wait this long for the next one; milliseconds. */
const pause = 350;

/** Makes a board sortable and searchable. The address says what is shown, so that going back and loading anew restore it. */
export function runBoard(fields: HTMLFieldSetElement, table: HTMLTableElement): void {
  const divisions = divisionRows(document);
  const lines = tableLines(table, divisions);
  const controls = viewControls(fields);
  const holds = boardHolds(
    controls,
    lines.filter(({ comparable }) => comparable).map(({ entry }) => entry),
  );
  const writePlaces = placeWriter(divisions);
  const arrange = tableArranger(table, lines);
  let view = wholeBoard;
  let waiting = 0;

  const markHead = sortHeads(
    table,
    () => view.sort,
    (sort) => choose({ sort }, false),
  );
  const showMore = moreRows(table, () => {
    const next = lines.find(({ row }) => row.hidden);
    choose({ full: true }, false);
    next?.row.querySelector('a')?.focus();
  });
  const showPicks = comparePicks(
    table,
    lines,
    { address: fields.dataset.compare ?? '', challenge: fields.dataset.challenge ?? '' },
    () => view.picked,
    (picked) => choose({ picked }, true),
  );

  function show(next: BoardView, whole = next.full): number {
    view = next;
    const fitting = sortedLines(fittingLines(lines, next), next);
    const shown = whole ? fitting : fitting.slice(0, firstRows);
    writePlaces(shown, next.division);
    arrange(shown, next.sort, shown.length < fitting.length);
    markHead(next.sort);
    showPicks(next.picked);
    const division = next.division === null ? null : controls.nameOf('division', next.division);
    controls.show(next, say.shown(fitting.length, lines.length, division));
    showMore(fitting.length - shown.length);
    return fitting.length;
  }

  function choose(part: Partial<BoardView>, typing: boolean): void {
    const before = view;
    const shown = show({ ...view, ...part });
    clearTimeout(waiting);
    const settle = () => {
      const query = writeView(view);
      const address = `${location.pathname}${query === '' ? '' : `?${query}`}${location.hash}`;
      history[typing ? 'replaceState' : 'pushState'](null, '', address);
      const { column, largestFirst } = view.sort;
      const head = table.querySelector(`th[data-column="${column}"]`)?.textContent?.trim() ?? column;
      const sorted = sameOrder(before.sort, view.sort)
        ? []
        : [say.sorted(head, isOfLetters(column) ? 'letters' : 'size', largestFirst)];
      if (part.picked === undefined)
        controls.announce([...sorted, say.announced(shown, lines.length)].join(' '));
    };
    if (typing) waiting = window.setTimeout(settle, pause);
    else settle();
  }

  // Paper has no button for more.
  addEventListener('beforeprint', () => show(view, true));
  addEventListener('afterprint', () => show(view));
  controls.listen(choose, () => choose({ ...wholeBoard, picked: view.picked }, false));
  addEventListener('popstate', () => {
    clearTimeout(waiting);
    show(readView(location.search, holds));
  });
  show(readView(location.search, holds));
}
