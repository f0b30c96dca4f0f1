/**
 * Rows of cells as lines of text, the columns below one another.
 *
 * @param words columns that hold words and begin at the left; the others hold numbers
 */
export function aligned(rows: readonly (readonly string[])[], words: readonly number[]): string {
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? [];
  return rows
    .map((row) =>
      row
        .map((cell, column) =>
          words.includes(column) ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
        )
        .join('  ')
        .trimEnd(),
    )
    .map((line) => `${line}\n`)
    .join('');
}
