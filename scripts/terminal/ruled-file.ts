import { mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Content } from '../../src/entries/folder/content.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitFile } from '../../src/entries/source/split-file.ts';
import { understandRuling } from '../../src/entries/understand/ruling.ts';
import { addParagraph } from '../../src/entries/write/add-paragraph.ts';
import type { Change } from '../../src/entries/write/after.ts';
import { rewrite } from '../../src/entries/write/rewrite.ts';
import type { Ruling } from '../../src/model/ruling.ts';
import { CannotRule, type Subject } from './ruling-subject.ts';

/** What a decision does to the file of its entry: fields that change, and a paragraph for what no field is made for. */
export interface Decision {
  readonly changes: readonly Change[];
  readonly remark: string | null;
}

/** The file with its changes, read again as the site will read it. Throws CannotRule where it would not be read. */
export function ruledFile(
  content: Content,
  { challenge, entrant, file }: Subject,
  old: string,
  { changes, remark }: Decision,
): { readonly text: string; readonly ruling: Ruling; readonly next: Content } {
  const rewritten = rewrite(file, old, changes);
  if (!rewritten.ok) throw new CannotRule(rewritten.why, rewritten.problems);
  const text = remark === null ? rewritten.text : addParagraph(rewritten.text, remark);
  const { source, problems } = readSource(file, text, splitFile);
  const entry = entrant.contender.entry.id;
  const read = source === null ? null : understandRuling(source, { challenge: challenge.id, entry });
  if (source === null || read === null || read.ruling === null) {
    const wrong = [...problems, ...(read?.problems ?? [])].filter(({ severity }) => severity === 'error');
    throw new CannotRule(
      `${wrong.map(({ message }) => message).join('\n')}\nNothing is written: the ruling would not be read with what was given.`,
    );
  }
  const others = content.rulings.filter(
    ({ value }) => value.challenge !== challenge.id || value.entry !== entry,
  );
  const ruling = read.ruling;
  return {
    text,
    ruling,
    next: { ...content, rulings: [...others, { value: ruling, source }] },
  };
}

/** In whole or not at all: a file half written would be a ruling lost. */
export async function writeWhole(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  await writeFile(`${path}.new`, text);
  await rename(`${path}.new`, path);
}
