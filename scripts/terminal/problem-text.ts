import { styleText } from 'node:util';
import type { Problem, Severity } from '../../src/entries/problems/problem.ts';
import { printable } from './printable.ts';

/** How problems are printed at a terminal. */
export interface TextOptions {
  readonly colour: boolean;
  /** Path to print for a file of the content folder. */
  readonly pathOf: (file: string) => string;
  /** The lines of a file, for the excerpt; null where it can't be shown. */
  readonly linesOf: (file: string) => readonly string[] | null;
}

const colours = { error: 'red', warning: 'yellow', note: 'cyan' } as const satisfies Record<Severity, string>;
const widest = 100;

/** One problem as a block of lines: place, sentence, the line with a mark below it, and what would be accepted. */
export function problemText(problem: Problem, options: TextOptions): string {
  const paint = (format: Parameters<typeof styleText>[0], text: string) =>
    options.colour ? styleText(format, text, { validateStream: false }) : text;
  const place = `${options.pathOf(problem.file)}:${problem.line}:${problem.column}`;
  const lines = [
    `${paint('bold', printable(place))} ${paint(colours[problem.severity], problem.severity)} ${paint('dim', problem.code)}`,
    `  ${printable(problem.message)}`,
    ...excerpt(problem, options.linesOf(problem.file), paint),
  ];
  if (problem.accepted !== null && !problem.message.includes(problem.accepted))
    lines.push(`  accepted: ${printable(problem.accepted)}`);
  if (problem.suggestion !== null)
    // The bar keeps a line of a file from standing first, where a build server might take it for a command.
    lines.push(`  try: ${problem.suggestion.split('\n').map(printable).join('\n     | ')}`);
  if (problem.related !== null) {
    const { file, line, column, message } = problem.related;
    lines.push(`  see ${printable(`${options.pathOf(file)}:${line}:${column}`)}: ${printable(message)}`);
  }
  return `${lines.join('\n')}\n`;
}

function excerpt(
  problem: Problem,
  lines: readonly string[] | null,
  paint: (format: 'dim' | 'red' | 'yellow' | 'cyan', text: string) => string,
): string[] {
  const line = lines?.[problem.line - 1];
  if (line === undefined || line.trim() === '') return [];
  const start = Math.min(problem.column - 1, line.length);
  const end = problem.endLine === problem.line ? Math.min(problem.endColumn - 1, line.length) : line.length;
  const from = start > widest - 20 ? start - 20 : 0;
  const shown = line.slice(from, from + widest);
  const before = printable(line.slice(from, start).replaceAll('\t', ' '));
  const marked = printable(line.slice(start, Math.min(Math.max(end, start + 1), from + widest)));
  const number = `${problem.line}`;
  return [
    `  ${paint('dim', `${number} |`)} ${printable(shown.replaceAll('\t', ' '))}`,
    `  ${' '.repeat(number.length)} ${paint('dim', '|')} ${' '.repeat(before.length)}${paint(
      colours[problem.severity],
      '^'.repeat(Math.max(1, marked.length)),
    )}`,
  ];
}
