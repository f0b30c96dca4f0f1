import { acceptedForms } from '../../quantities/accepted.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { findUnit, siUnit, type Unit } from '../../quantities/units.ts';

/** A column a log may have. */
export interface Column {
  readonly name: string;
  readonly kind: Kind;
  /** Whether the name alone is enough, as for turns. */
  readonly unitless: boolean;
  /** As one would write it. */
  readonly example: string;
}

export interface FoundColumn {
  readonly column: Column;
  /** Which cell of a row, from 0. */
  readonly index: number;
  readonly unit: Unit;
  /** Relative standard uncertainty stated behind the unit; null where none is. */
  readonly calibration: number | null;
}

/** A heading that begins with a column's name and cannot be read. */
export interface HeaderFault {
  readonly index: number;
  readonly column: Column;
  readonly message: string;
  readonly accepted: string;
}

/** A heading longer than any that says something; patterns that look for white space in several places are slow with more. */
const longestHeading = 100;

const heading = /^([a-z][a-z -]*?)\s*(?:[[(]([^\])]*)[\])])?\s*(?:(?:±|\+\/-)\s*(\d+(?:[.,]\d+)?)\s*%)?$/i;

/** What one cell of a header says; null for a column this log does not need. */
export function readHeading(
  cell: string,
  index: number,
  columns: readonly Column[],
): FoundColumn | HeaderFault | null {
  const match = cell.length > longestHeading ? null : heading.exec(cell.trim());
  const column = columns.find(({ name }) => name === match?.[1]?.trim().toLowerCase());
  if (column === undefined) return misspelt(cell, index, columns);
  const written = match?.[2]?.trim() ?? '';
  const unit = written === '' && column.unitless ? siUnit(column.kind) : findUnit(column.kind, written);
  if (unit === null) {
    const what =
      written === '' ? 'has no unit' : `has the unit "${written}", which is not one of ${column.kind}`;
    return {
      index,
      column,
      message: `The column "${column.name}" ${what}: write it like \`${column.example}\`.`,
      accepted: acceptedForms(column.kind),
    };
  }
  const percent = match?.[3]?.replace(',', '.');
  return { column, index, unit, calibration: percent === undefined ? null : Number(percent) / 100 };
}

/** A heading that begins with a known name but cannot be read is a fault; any other column is the builder's own. */
function misspelt(cell: string, index: number, columns: readonly Column[]): HeaderFault | null {
  const column = columns.find(({ name }) => cell.trim().toLowerCase().startsWith(name));
  if (column === undefined) return null;
  return {
    index,
    column,
    message: `The heading "${cell.slice(0, 60)}" cannot be read: write it like \`${column.example}\`, with \`± 2 %\` behind it where the calibration is known.`,
    accepted: column.example,
  };
}
