import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../../..');

/** Everything that comes into the browser with a module, at once or when it is needed; types do not. */
function reached(start: string): { readonly files: Set<string>; readonly packages: Set<string> } {
  const files = new Set<string>();
  const packages = new Set<string>();
  const waiting = [join(root, start)];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (files.has(file)) continue;
    files.add(file);
    const code = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
    for (const [, clause = '', from, alone, lazy] of code.matchAll(
      /^(?:import|export) ([\w*{][^;=()]*?) from '([^']+)'|^import '([^']+)'|\bimport\('([^']+)'\)/gm,
    )) {
      if (clause.startsWith('type ')) continue;
      const target = from ?? alone ?? lazy ?? '';
      if (target.startsWith('.')) waiting.push(resolve(dirname(file), target));
      else packages.add(target);
    }
  }
  return { files: new Set([...files].map((file) => relative(root, file))), packages };
}

const { files, packages } = reached('src/client/enter/start.ts');

describe('what comes into the browser with the form', () => {
  it('is seen by this test', () => {
    expect([...files].every((file) => existsSync(join(root, file)))).toBe(true);
    expect(files.has('src/entries/understand/entry.ts')).toBe(true);
    expect(files.has('src/client/enter/side-markup.ts')).toBe(true);
  });

  it('holds nothing of the edge where files are read, and no room of the site', () => {
    const edge =
      /^src\/entries\/(?:folder\/(?:read-folder|gather)|photos\/|source\/split-file|seal-of)|^src\/(?:almanac|publish|pages|words\.ts)/;
    expect([...files].filter((file) => edge.test(file))).toEqual([]);
  });

  it('needs three packages, and those that read Markdown', () => {
    expect([...packages].sort()).toEqual(['remark', 'remark-gfm', 'unist-util-visit', 'yaml', 'zod']);
  });
});
