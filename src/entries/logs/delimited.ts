/** How the cells of a log are written: what stands between them, and what a decimal is written with. */
export interface Delimited {
  readonly separator: ',' | ';' | '\t';
}

/** The separator of a log, from its header: a tab, else a semicolon, else a comma. */
export function separatorOf(header: string): Delimited['separator'] {
  if (header.includes('\t')) return '\t';
  return header.includes(';') ? ';' : ',';
}

/** The cells of one line, trimmed; double quotes around a cell are taken off, doubled ones inside it halved. */
export function cellsOf(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator).map((cell) => cell.trim());
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < line.length; at++) {
    const character = line[at];
    if (character === '"') {
      if (quoted && line[at + 1] === '"') {
        cell += '"';
        at++;
      } else quoted = !quoted;
    } else if (character === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += character;
  }
  cells.push(cell.trim());
  return cells;
}

const number = /^[-+−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][-+]?\d{1,3})?$/;

/** The decimal mark a cell is written with, null where it has none. */
export function decimalMarkOf(cell: string): '.' | ',' | null {
  if (cell.includes('.')) return '.';
  return cell.includes(',') ? ',' : null;
}

/** The number in a cell, decimal point or comma; null for anything else, NaN and infinities included. */
export function numberIn(cell: string): number | null {
  if (!number.test(cell)) return null;
  const value = Number(cell.replace(',', '.').replace('−', '-'));
  return Number.isFinite(value) ? value : null;
}
