import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '..');

/** Each room and the rooms it may import from: the arrows of DEVELOPERS.md. */
const rooms: Record<string, readonly string[]> = {
  quantities: [],
  model: ['quantities'],
  rubber: ['quantities', 'model'],
  airframe: ['quantities', 'model'],
  timing: ['quantities', 'model'],
  flight: ['quantities', 'model', 'rubber', 'airframe', 'timing'],
  figures: ['quantities', 'model', 'rubber', 'airframe', 'timing', 'flight'],
  contest: ['quantities', 'model', 'rubber', 'airframe', 'timing', 'flight', 'figures'],
};
rooms.drawings = ['quantities', 'model', 'rubber', 'airframe', 'timing', 'flight', 'figures'];
rooms.entries = Object.keys(rooms).filter((room) => room !== 'drawings');
rooms.almanac = Object.keys(rooms).filter((room) => room !== 'drawings');
rooms.charts = Object.keys(rooms).filter((room) => room !== 'drawings');
rooms.publish = Object.keys(rooms).filter((room) => room !== 'charts' && room !== 'drawings');
// What is set side by side is plain data: numbers, texts and the shape of a drawing.
rooms.compare = ['quantities', 'drawings'];
// What runs in a visitor's browser reads the pure rooms, the charts drawn alike in build and browser, and how components
// write numbers and words.
rooms.client = [
  ...Object.keys(rooms).filter((room) => !['almanac', 'publish'].includes(room)),
  'components',
  'words',
];
const site = ['pages', 'layouts', 'components', 'cards', 'styles', 'words', 'words.ts'];
for (const room of site) rooms[room] = [...Object.keys(rooms), ...site];

/** Rooms that give the same answer in the command line, the build and the browser. */
const pure = [
  'quantities',
  'model',
  'rubber',
  'airframe',
  'timing',
  'flight',
  'figures',
  'contest',
  'drawings',
  'compare',
];

/** The only files of `entries` that may touch Node: the edge where files are read. */
const edgeOfEntries = ['read-folder', 'read-photo', 'split-file', 'seal-of'];

interface Import {
  readonly file: string;
  readonly target: string;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile() && /\.(ts|astro|mjs)$/.test(item.name))
    .map((item) => join(item.parentPath, item.name));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const found = text.matchAll(/(?:\bfrom|\bimport)\s*\(?\s*['"]([^'"]+)['"]/g);
  return [...found].map((match) => ({
    file: relative(root, file),
    target: match[1] ?? '',
  }));
}

function roomOf(path: string): string {
  return relative(join(root, 'src'), path).split(/[\\/]/)[0] ?? '';
}

const imports = sourceFiles(join(root, 'src')).flatMap(importsOf);
const inside = imports
  .filter(({ target }) => target.startsWith('.'))
  .map(({ file, target }) => ({
    file,
    room: roomOf(join(root, file)),
    to: roomOf(resolve(root, dirname(file), target)),
  }));

describe('the arrows between the rooms of src', () => {
  it('sees the imports it is to judge', () => {
    expect(inside.length).toBeGreaterThan(50);
    expect(inside.some(({ room, to }) => room === 'contest' && to === 'figures')).toBe(true);
  });

  it('run one way', () => {
    const wrong = inside
      .filter(({ room, to }) => room !== to && !(rooms[room] ?? []).includes(to))
      .map(({ file, to }) => `${file} imports from ${to}`);
    expect(wrong).toEqual([]);
  });

  it('lead to no room that this list does not know', () => {
    const known = new Set(Object.keys(rooms));
    expect(
      [...new Set(inside.flatMap(({ room, to }) => [room, to]))].filter((room) => !known.has(room)),
    ).toEqual([]);
  });
});

describe('the pure rooms', () => {
  it('import no package and nothing of Node', () => {
    const wrong = imports
      .filter(({ file, target }) => pure.includes(roomOf(join(root, file))) && !target.startsWith('.'))
      .map(({ file, target }) => `${file} imports ${target}`);
    expect(wrong).toEqual([]);
  });

  it('read no clock, locale, environment or page', () => {
    const forbidden =
      /\b(Date\.now|new Date\(\)|process\.|Intl\.|toLocale\w*|navigator\.|window\.|document\.|globalThis|Math\.random|performance\.)/;
    const wrong = pure
      .flatMap((room) => sourceFiles(join(root, 'src', room)))
      .flatMap((file) => {
        const code = readFileSync(file, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
        const match = code.match(forbidden);
        return match === null ? [] : [`${relative(root, file)} uses ${match[0]}`];
      });
    expect(wrong).toEqual([]);
  });

  it('and the checking part of entries touches Node only at its edge', () => {
    const wrong = imports
      .filter(
        ({ file, target }) =>
          roomOf(join(root, file)) === 'entries' && /^(node:|sharp|gray-matter)/.test(target),
      )
      .filter(({ file }) => !edgeOfEntries.some((name) => file.endsWith(`/${name}.ts`)))
      .map(({ file, target }) => `${file} imports ${target}`);
    expect(wrong).toEqual([]);
  });
});
