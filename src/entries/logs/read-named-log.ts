import {
  type Attachments,
  folderOf,
  isPlainName,
  missingFile,
  namesBeside,
  type With,
} from '../folder/attachments.ts';
import { readText } from '../folder/disk.ts';
import type { Reference } from '../folder/references.ts';
import { problemOver } from '../problems/make-problem.ts';
import { limits } from '../source/limits.ts';
import type { SourceDocument } from '../source/source.ts';
import type { ReadLog } from './read-log.ts';

const logCodes = { tooLarge: 'log-too-long', unreadable: 'log-text', notText: 'log-text' } as const;

export interface UsableLog<Point> {
  readonly points: readonly Point[];
  readonly calibration: number;
}

export type ReadText<Point> = (file: string, text: string) => ReadLog<Point>;

/** Reads a log that a text names. What is wrong inside it is a problem there, what is wrong with its name a problem here. */
export async function readNamedLog<Point>(
  source: SourceDocument,
  reference: Reference,
  from: Attachments,
  readWith: ReadText<Point>,
): Promise<With<UsableLog<Point> | null>> {
  const { name, node } = reference;
  if (!isPlainName(name) || !/\.csv$/i.test(name)) {
    const message = `"${name}" is not the plain name of a log: name a file beside this one that ends in csv.`;
    const problem = problemOver(source, node.start, node.end, 'log-name', {
      message,
      found: name,
      accepted: 'such as bench.csv',
    });
    return { value: null, problems: [problem] };
  }
  const path = folderOf(source.file) + name;
  if (!namesBeside(source, from).includes(name))
    return { value: null, problems: [missingFile(source, reference, from, 'log-missing')] };
  const { text, problems } = await readText(from.disk, path, limits.logBytes, logCodes);
  if (text === null) return { value: null, problems };
  const log = readWith(path, text);
  return {
    value: log.points === null ? null : { points: log.points, calibration: log.calibration },
    problems: log.problems,
  };
}
