import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { problemText } from './problem-text.ts';

/** Prints problems for a person, in the order given, on the stream given. */
export function printProblems(
  problems: readonly Problem[],
  content: string,
  stream: NodeJS.WriteStream,
): void {
  const pathOf = pathFrom(process.cwd(), content);
  const linesOf = lineReader(content);
  const colour = coloured(stream);
  for (const problem of problems) stream.write(`${problemText(problem, { colour, pathOf, linesOf })}\n`);
}

/** Turns a file of the content folder into a path as seen from another folder, with `/`. */
export function pathFrom(folder: string, content: string): (file: string) => string {
  return (file) => relative(folder, join(content, file)).replaceAll('\\', '/');
}

/** Colours are for a terminal that takes them: not for a pipe, not with NO_COLOR. */
export function coloured(stream: NodeJS.WriteStream): boolean {
  return stream.isTTY === true && stream.hasColors();
}

function lineReader(content: string): (file: string) => readonly string[] | null {
  const known = new Map<string, readonly string[] | null>();
  return (file) => {
    if (!/\.(?:md|csv|json)$/.test(file)) return null;
    const lines = known.get(file) ?? readLines(join(content, file));
    known.set(file, lines);
    return lines;
  };
}

function readLines(path: string): readonly string[] | null {
  try {
    return readFileSync(path, 'utf8')
      .replace(/^\ufeff/, '')
      .split(/\r\n|\n|\r/);
  } catch {
    return null;
  }
}
