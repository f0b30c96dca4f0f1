import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Content } from '../../src/entries/folder/content.ts';
import { readContent } from '../../src/entries/folder/read-folder.ts';

export type Files = Readonly<Record<string, string | Uint8Array>>;

const entry = [
  'builder: amarsh',
  'control: free',
  'wing: { span: 1.2 m }',
  'mass: { airframe: 100 g }',
  'motors: [{ count: 2 }]',
].join('\n');

/** The smallest valid entry, with further lines of front matter. */
export function entryFile(name: string, ...lines: string[]): string {
  return `---\nname: ${name}\n${entry}\n${lines.map((line) => `${line}\n`).join('')}---\nText.\n`;
}

/** A small folder without a mistake. */
export const soundFolder: Files = {
  'site.md': '---\nformat: 1\ntitle: Long Haul\naddress: https://haul.example/\n---\n',
  'challenges/haul.md': '---\ntitle: Long Haul\nopens: 2027-03-01\ncloses: 2027-10-31\n---\n',
  'entries/haul/plover/entry.md': entryFile('Plover'),
};

/** Writes files into a folder of their own and removes it when the work is done. */
export async function inFolder<Result>(
  files: Files,
  work: (directory: string) => Promise<Result> | Result,
): Promise<Result> {
  const directory = mkdtempSync(join(tmpdir(), 'content-'));
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(directory, path)), { recursive: true });
      writeFileSync(join(directory, path), text);
    }
    return await work(directory);
  } finally {
    rmSync(directory, { recursive: true, force: true });
  }
}

/** What is read from a folder of these files laid over the sound ones. */
export function contentOf(files: Files): Promise<Content> {
  return inFolder({ ...soundFolder, ...files }, readContent);
}

/** `code file:line:column` of every problem. */
export function placesOf({ problems }: Content): string[] {
  return problems.map(({ code, file, line, column }) => `${code} ${file}:${line}:${column}`);
}
