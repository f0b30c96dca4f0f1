import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';

/** What a file gives that is asked for with a limit: its bytes, or its size where it is larger, or why it could not be read. */
export type Bytes =
  | { readonly is: 'read'; readonly bytes: Uint8Array }
  | { readonly is: 'too-large'; readonly size: number }
  | { readonly is: 'unreadable'; readonly why: string };

/** The content folder as the reader needs it. Paths are relative to it, with `/`. */
export interface Disk {
  readBytes(path: string, limit: number): Promise<Bytes>;
}

/** The codes that say a text cannot be had; those of a log cost only the log. */
export interface TextCodes {
  readonly tooLarge: ProblemCode;
  readonly unreadable: ProblemCode;
  readonly notText: ProblemCode;
}

/** A file as text. Null, with the problem, where it is too large, unreadable or not UTF-8. */
export async function readText(
  disk: Disk,
  path: string,
  limit: number,
  codes: TextCodes,
): Promise<{ readonly text: string | null; readonly problems: readonly Problem[] }> {
  const read = await disk.readBytes(path, limit);
  const refused = (code: ProblemCode, message: string, accepted: string) => ({
    text: null,
    problems: [problemOf(path, code, { message, accepted })],
  });
  if (read.is === 'unreadable')
    return refused(
      codes.unreadable,
      `The file could not be read from the disk (${read.why}).`,
      'a file that may be read',
    );
  if (read.is === 'too-large')
    return refused(
      codes.tooLarge,
      `The file holds ${read.size} bytes; at most ${limit} are accepted.`,
      `at most ${limit} bytes`,
    );
  try {
    return {
      text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(read.bytes),
      problems: [],
    };
  } catch {
    return refused(
      codes.notText,
      'The file is not UTF-8 text: save it as UTF-8 in your editor.',
      'UTF-8, with or without a byte order mark',
    );
  }
}
