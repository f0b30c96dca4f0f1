import { type Formula, type Letter, symbolsOf, toText } from './formula.ts';

/** One line of what a figure is worked out by. */
export interface FormulaLine {
  /** `else` where the line before does not apply; `where` before what a symbol of it is. */
  readonly lead: '' | 'else' | 'where';
  readonly formula: Formula;
  /** When it applies, or over what it runs; may be empty. */
  readonly remark: string;
}

const begins =
  (lead: FormulaLine['lead']) =>
  (formula: Formula, remark = ''): FormulaLine => ({ lead, formula, remark });

/** The first way to work a figure out. */
export const by = begins('');
/** What is taken where the lines before do not apply. */
export const orElse = begins('else');
/** What a symbol of the lines before is. */
export const where = begins('where');

/** A line as plain text, such as "else b·c". */
export function lineText({ lead, formula, remark }: FormulaLine): string {
  const before = lead === '' ? '' : `${lead} `;
  return `${before}${toText(formula)}${remark === '' ? '' : ` (${remark})`}`;
}

/** All lines as one line of plain text. */
export function linesText(lines: readonly FormulaLine[]): string {
  return lines.map(lineText).join(', ');
}

/** What the symbols of the lines mean, each once; one that needs no word is left out. */
export function symbolsOfLines(lines: readonly FormulaLine[]): Letter[] {
  const symbols = new Set(lines.flatMap(({ formula }) => symbolsOf(formula)));
  return [...symbols].filter(({ means }) => means !== '');
}
