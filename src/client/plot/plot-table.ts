import { plot as say } from '../../words/plot.ts';
import type { ChosenPlot, Missing, PlotRow } from './chosen-plot.ts';
import { element } from './element.ts';
import type { PlotData, PlotEntry } from './plot-data.ts';

/** How the address of an aircraft's page is made. */
export type AddressOf = (entry: PlotEntry) => string;

/** The table beside a plot, sorted by what lies across: each row has the `data-id` of its mark. */
export function plotTable(
  { x, y, rows }: ChosenPlot,
  { challenges }: PlotData,
  addressOf: AddressOf,
): HTMLElement {
  const several = challenges.size > 1;
  const columns = [
    { text: say.aircraft, kind: '' },
    { text: x.name, kind: 'number' },
    { text: y.name, kind: 'number' },
  ];
  const head = columns.map(({ text, kind }) => element('th', { scope: 'col', class: kind }, text));
  const line = (row: PlotRow) =>
    element(
      'tr',
      { 'data-id': row.id },
      element(
        'th',
        { scope: 'row' },
        linkTo(row.entry, addressOf),
        ...asides(row, several ? challenges : new Map()),
      ),
      element('td', { class: 'number' }, row.x),
      element('td', { class: 'number' }, row.y),
    );
  const body = element('tbody', {});
  appendByParts(body, rows, line);
  return element(
    'div',
    { class: 'scroll', role: 'region', 'aria-label': say.table, tabindex: '0' },
    element('table', { class: 'ledger' }, element('thead', {}, element('tr', {}, ...head)), body),
  );
}

/** So many rows are made at once. */
const part = 150;

/** The first rows at once, the others frame by frame, so that a long table never holds up the chart beside it. */
function appendByParts(
  body: HTMLElement,
  rows: readonly PlotRow[],
  line: (row: PlotRow) => HTMLElement,
): void {
  body.append(...rows.slice(0, part).map(line));
  if (rows.length <= part) return;
  requestAnimationFrame(() => {
    // Where another table took its place meanwhile, nobody needs the rest.
    if (body.isConnected) appendByParts(body, rows.slice(part), line);
  });
}

/** Who is not in the plot, each with the reason. */
export function missingList(missing: readonly Missing[], addressOf: AddressOf): HTMLElement[] {
  if (missing.length === 0) return [];
  return [
    element('h3', {}, say.missing),
    element(
      'ul',
      { class: 'plot-missing' },
      ...missing.map(({ entry, figure, absent }) =>
        element(
          'li',
          {},
          linkTo(entry, addressOf),
          ' ',
          element('span', { class: 'aside' }, say.missingReason(figure.name, absent ?? say.notOnLog)),
        ),
      ),
    ),
  ];
}

function linkTo(entry: PlotEntry, addressOf: AddressOf): HTMLElement {
  return element('a', { href: addressOf(entry) }, entry.name);
}

/** What stands below a name: the challenge, where several are shown, and what is to be known of the mark. */
function asides({ entry, best, waiting }: PlotRow, challenges: PlotData['challenges']): HTMLElement[] {
  const texts = [challenges.get(entry.challenge), best ? say.onFrontier : '', waiting ? say.waits : ''];
  return texts.filter(Boolean).map((text = '') => element('span', { class: 'aside' }, text));
}
