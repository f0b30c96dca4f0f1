import type { Problem, Severity } from '../../src/entries/problems/problem.ts';
import { printable } from './printable.ts';

const commands = { error: 'error', warning: 'warning', note: 'notice' } as const satisfies Record<
  Severity,
  string
>;

/**
 * One problem as a workflow command, on one line. Every part that a contributor may have written is escaped, so that
 * it can neither start a command of its own nor act on the terminal of who reads the log.
 *
 * @param pathOf path of the file from the root of the repository
 */
export function problemAnnotation(problem: Problem, pathOf: (file: string) => string): string {
  const sameLine = problem.endLine === problem.line;
  const properties = [
    `file=${property(pathOf(problem.file))}`,
    `line=${problem.line}`,
    `endLine=${problem.endLine}`,
    `col=${problem.column}`,
    ...(sameLine ? [`endColumn=${problem.endColumn}`] : []),
    `title=${property(problem.code)}`,
  ];
  const hint = problem.suggestion === null ? '' : `\nTry: ${problem.suggestion}`;
  return `::${commands[problem.severity]} ${properties.join(',')}::${data(`${problem.message}${hint}`)}\n`;
}

function data(text: string): string {
  return text.replaceAll('%', '%25').split('\n').map(printable).join('%0A');
}

function property(text: string): string {
  return printable(text).replaceAll('%', '%25').replaceAll(':', '%3A').replaceAll(',', '%2C');
}
