import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { renderMarkdown } from '../../src/entries/markdown.ts';

/**
 * The least any build of the same entries must do: read the files, split off the front matter, render the Markdown
 * with the project's own pipeline, write as many bytes of HTML. Arguments: content folder, output folder, bytes of
 * HTML of one entry page.
 */
export async function main([content = '', out = '', bytes = '0']: string[]): Promise<number> {
  const entries = join(content, 'entries', 'measured');
  for (const name of (await readdir(entries)).sort()) {
    const text = await readFile(join(entries, name, 'entry.md'), 'utf8');
    const end = text.indexOf('\n---\n', 3);
    const html = renderMarkdown(text.slice(end + 5));
    const folder = join(out, name);
    await mkdir(folder, { recursive: true });
    await writeFile(join(folder, 'index.html'), html.padEnd(Number(bytes), ' '));
  }
  return 0;
}
