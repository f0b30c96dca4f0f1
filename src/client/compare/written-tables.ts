import type { ComparedAircraft } from '../../compare/aircraft.ts';
import { type FactGroup, type FactRow, groupFacts } from '../../compare/fact-rows.ts';
import { compare as say } from '../../words/compare.ts';
import { type Html, html } from './html.ts';
import { both, ledger, type Place } from './parts.ts';

/** One aircraft's column: its name, and what stands where it does not say. */
interface Column {
  readonly name: string;
  readonly gap: string;
}

/** What was written of motors, building and flights: the lines that differ, and folded those that are the same. */
export function writtenTables(aircraft: readonly ComparedAircraft[], on: Place): Html {
  const groups = groupFacts(aircraft).map((group) => {
    const columns = aircraft.map(({ name }, index) => ({
      name,
      gap: group.has[index] === true ? say.notSaid : '–',
    }));
    return written(group, columns, on);
  });
  return html`<h3>${say.written}</h3>${groups}`;
}

function written({ title, different, alike }: FactGroup, columns: readonly Column[], on: Place): Html {
  const table = (name: string, rows: readonly FactRow[]) => ledgerOf(on, name, columns, rows);
  return html`<h4>${title}</h4>${
    different.length === 0 ? html`<p>${say.allSame}</p>` : table(say.writtenTable(title), different)
  }${
    alike.length === 0
      ? null
      : html`<div class="fold-list"><details><summary>${say.sameLines(alike.length)}</summary>${table(say.sameTable(title), alike)}</details></div>`
  }`;
}

function ledgerOf(on: Place, name: string, columns: readonly Column[], rows: readonly FactRow[]): Html {
  const head = html`<tr><th scope="col">${say.line}</th>${columns.map((one) => html`<th scope="col">${one.name}</th>`)}</tr>`;
  return ledger(
    on,
    name,
    'compare words',
    head,
    rows.map(({ label, cells }) => {
      const shown = columns.map(({ name: of, gap }, index) => {
        const cell = cells[index] ?? null;
        return cell === null
          ? html`<td data-of="${of}" class="missing">${gap}</td>`
          : html`<td data-of="${of}">${both(cell)}</td>`;
      });
      return html`<tr><th scope="row">${label}</th>${shown}</tr>`;
    }),
  );
}
