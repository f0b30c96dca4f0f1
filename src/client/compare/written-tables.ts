import type { ComparedAircraft } from '../../compare/aircraft.ts';
import { type FactGroup, type FactRow, groupFacts } from '../../compare/fact-rows.ts';
import { compare as say } from '../../words/compare.ts';
import { type Html, html } from './html.ts';
import { both, ledger } from './parts.ts';

/** What was written of motors, building and flights: the lines that differ, and folded those that are the same. */
export function writtenTables(aircraft: readonly ComparedAircraft[]): Html {
  const names = aircraft.map(({ name }) => name);
  return html`<h3>${say.written}</h3>${groupFacts(aircraft).map((group) => written(group, names))}`;
}

function written({ title, has, different, alike }: FactGroup, names: readonly string[]): Html {
  return html`<h4>${title}</h4>${
    different.length === 0
      ? html`<p>${say.allSame}</p>`
      : table(say.writtenTable(title), names, has, different)
  }${
    alike.length === 0
      ? null
      : html`<div class="fold-list"><details><summary>${say.sameLines(alike.length)}</summary>${table(say.sameTable(title), names, has, alike)}</details></div>`
  }`;
}

function table(
  name: string,
  names: readonly string[],
  has: readonly boolean[],
  rows: readonly FactRow[],
): Html {
  return ledger(
    name,
    'compare words',
    html`<tr><th scope="col">${say.line}</th>${names.map((one) => html`<th scope="col">${one}</th>`)}</tr>`,
    rows.map(
      ({ label, cells }) =>
        html`<tr><th scope="row">${label}</th>${cells.map(
          (cell, index) =>
            html`<td data-of="${names[index] ?? ''}"${cell === null ? html` class="missing"` : null}>${cell === null ? (has[index] === true ? say.notSaid : '–') : both(cell)}</td>`,
        )}</tr>`,
    ),
  );
}
