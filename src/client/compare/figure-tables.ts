import { type ComparedAircraft, isThere } from '../../compare/aircraft.ts';
import { type FigureRow, sortFigures } from '../../compare/figure-rows.ts';
import { compare as say } from '../../words/compare.ts';
import { type Html, html } from './html.ts';
import { both, ledger, type Place } from './parts.ts';

/** Figures that differ, and folded below them those that do not or that cannot be compared. */
export function figureTables(aircraft: readonly ComparedAircraft[], on: Place): Html {
  const names = aircraft.map(({ name }) => name);
  const { different, alike, alone } = sortFigures(aircraft);
  return html`<h3>${say.differs}</h3>${
    different.length === 0
      ? html`<p>${say.nothingDiffers}</p>`
      : html`<p class="legend">${say.differsExplained}</p>${table(say.figuresTable, names, different, on)}`
  }<div class="fold-list">${folded(say.alikeFigures(alike.length), say.alikeTable, names, alike, on)}${folded(say.aloneFigures(alone.length), say.aloneTable, names, alone, on)}</div>`;
}

function folded(
  summary: string,
  name: string,
  names: readonly string[],
  rows: readonly FigureRow[],
  on: Place,
): Html {
  return rows.length === 0
    ? html``
    : html`<details><summary>${summary}</summary>${table(name, names, rows, on)}</details>`;
}

function table(name: string, names: readonly string[], rows: readonly FigureRow[], on: Place): Html {
  const measured = rows.some(({ apart }) => apart !== null);
  const head = html`<tr><th scope="col">${say.figure}</th>${names.map((one) => html`<th scope="col" class="number">${one}</th>`)}${
    measured ? html`<th scope="col" class="number">${say.apart}</th>` : null
  }</tr>`;
  return ledger(
    on,
    name,
    'compare',
    head,
    rows.map((row) => line(row, names, measured, on)),
  );
}

function line(
  { id, name, cells, apart }: FigureRow,
  names: readonly string[],
  measured: boolean,
  on: Place,
): Html {
  const shown = cells.map((cell, index) => {
    const of = names[index] ?? '';
    if (isThere(cell))
      return html`<td class="number" data-of="${of}">${both(cell.shown)} <span class="aside">${cell.basis}</span></td>`;
    return html`<td class="number missing" data-of="${of}">– <span class="aside">${cell?.absent ?? ''}</span></td>`;
  });
  const distance =
    apart === null ? '–' : Number.isFinite(apart) ? apart.toFixed(apart < 9.95 ? 1 : 0) : say.apartExact;
  return html`<tr><th scope="row"><a href="${on.explained}#${id}">${name}</a></th>${shown}${
    measured ? html`<td class="number apart" data-of="${say.apart}">${distance}</td>` : null
  }</tr>`;
}
