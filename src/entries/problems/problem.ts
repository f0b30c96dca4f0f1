export type Severity = 'error' | 'warning' | 'note';

/** A place in a file, 1-based, columns in UTF-16 units, counted from the top of the file. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/**
 * One thing that is wrong, as data. Printers add place and colour; the message is a full sentence that names the
 * field as its writer wrote it, quotes what was found and says what to do.
 */
export interface Problem extends Place {
  /** Kebab-case and stable; each code is declared once, in `problem-codes.ts`. */
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly found: string | null;
  readonly accepted: string | null;
  /** Text ready to paste, in the format of the file. */
  readonly suggestion: string | null;
  /** The other end of a contradiction or of a duplicate. */
  readonly related: (Place & { readonly message: string }) | null;
}

/** The stable order of all printers: by file, then line, column and code. */
export function byPlace(a: Problem, b: Problem): number {
  return (
    compare(a.file, b.file) ||
    a.line - b.line ||
    a.column - b.column ||
    compare(a.code, b.code) ||
    compare(a.message, b.message)
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
