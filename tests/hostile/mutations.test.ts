import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitFile } from '../../src/entries/source/split-file.ts';
import { understandEntry } from '../../src/entries/understand/entry.ts';

// Every field of a fully filled entry is taken away, misspelt, given another shape and given hostile values, one at a time.
// Where each stands is worked out here, from the text; what must be refused is content format 1.

const file = resolve(import.meta.dirname, '../cases/format-1/entries/long-haul-2027/reedling/entry.md');
const written = readFileSync(file, 'utf8');
const frontMatter = written.slice('---\n'.length, written.indexOf('\n---\n', 4));
const rest = written.slice('---\n'.length + frontMatter.length);

/** A field: the way to it, and where its key and its value stand in the front matter. */
interface Field {
  readonly path: readonly (string | number)[];
  readonly key: readonly [number, number];
  readonly value: readonly [number, number];
  readonly shape: 'text' | 'list' | 'map';
}

const fields: Field[] = [];
collect(parseDocument(frontMatter).contents, []);

function collect(node: unknown, path: readonly (string | number)[]): void {
  if (isSeq(node)) for (const [index, item] of node.items.entries()) collect(item, [...path, index]);
  if (!isMap(node)) return;
  for (const { key, value } of node.items) {
    if (!isScalar(key)) throw new Error('a key that is no text');
    const inner = value as Node;
    const [keyFrom = 0, keyTo = 0] = key.range ?? [];
    const [from = 0, to = 0] = inner.range ?? [];
    const here = [...path, String(key.value)];
    const shape = isMap(inner) ? 'map' : isSeq(inner) ? 'list' : 'text';
    fields.push({ path: here, key: [keyFrom, keyTo], value: [from, to], shape });
    collect(inner, here);
  }
}

function problemsOf(text: string): readonly Problem[] {
  const { source, problems } = readSource('entry.md', text, splitFile);
  if (source === null) return problems;
  const entry = { challenge: 'long-haul-2027', id: 'reedling' };
  return [...problems, ...understandEntry(source, entry).problems];
}

/** The entry with one stretch of its front matter replaced; what follows a block moves to its own line. */
function withReplaced([from, to]: readonly [number, number], text: string): string {
  const block = frontMatter.slice(from, to).endsWith('\n') ? '\n' : '';
  return `---\n${frontMatter.slice(0, from)}${text}${block}${frontMatter.slice(to)}${rest}`;
}

/** Line in the file of an offset in the front matter. */
function lineOf(offset: number): number {
  return frontMatter.slice(0, offset).split('\n').length + 1;
}

/** Of a list of mutations: how many, how many an error refuses, how many of those in the line of the mutation. */
interface Sums {
  mutations: number;
  refused: number;
  inPlace: number;
  accepted: string[];
}

function run(
  mutations: readonly { readonly field: Field; readonly text: string; readonly line: number }[],
): Sums {
  const sums: Sums = { mutations: 0, refused: 0, inPlace: 0, accepted: [] };
  for (const { field, text, line } of mutations) {
    const errors = problemsOf(text).filter(({ severity }) => severity === 'error');
    sums.mutations += 1;
    if (errors.length > 0) sums.refused += 1;
    else sums.accepted.push(field.path.filter((segment) => typeof segment === 'string').join('.'));
    if (errors.some((error) => error.line === line)) sums.inPlace += 1;
  }
  return sums;
}

const total = { mutations: 0, refused: 0, inPlace: 0 };

function note(kind: string, { mutations, refused, inPlace }: Sums): void {
  total.mutations += mutations;
  total.refused += refused;
  total.inPlace += inPlace;
  console.info(`${kind}: ${mutations} mutations, ${refused} refused, ${inPlace} of them in their line`);
}

describe('a fully filled entry', () => {
  it('has no mistake, and fields of every kind', () => {
    expect(problemsOf(written).filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(fields.length).toBeGreaterThan(140);
  });

  it('with a key misspelt is refused there, whichever it is', () => {
    const sums = run(
      fields.map((field) => ({
        field,
        text: withReplaced(field.key, `${frontMatter.slice(...field.key)}qq`),
        line: lineOf(field.key[0]),
      })),
    );
    note('misspelt', sums);
    // The parts of the mass and of the structure are named by the builder.
    expect(sums.accepted.filter((path) => !/^(mass\.parts|structure)\./.test(path))).toEqual([]);
    expect(sums.inPlace).toBe(fields.length - sums.accepted.length);
  });

  it('with a value of another shape is refused there', () => {
    const other = { text: '[[x]]', list: '{ zz: 1 }', map: '"?!"' } as const;
    const sums = run(
      fields.map((field) => ({
        field,
        text: withReplaced(field.value, other[field.shape]),
        line: lineOf(field.value[0]),
      })),
    );
    note('mistyped', sums);
    // A log is a map, or the name of its file alone; what is no name of one costs the log where the folder is read.
    expect(sums.accepted).toEqual(['motors.thrust-log']);
    expect(sums.inPlace).toBe(fields.length - 1);
  });

  // A control character, half a surrogate pair, an override of direction; more than any field holds; what YAML allows and
  // this format does not.
  it.each([
    ['a control character', '"a\\x07b"'],
    ['half a surrogate pair', '"a\\ud800b"'],
    ['an override of direction', '"a\\u202eb"'],
    ['six thousand letters', 'x'.repeat(6000)],
    ['an anchor', '&a x'],
    ['an alias', '*a'],
    ['a tag', '!!js/function x'],
    ['a number beyond all', '{ a: 1e999 }'],
  ])('with %s for a value is refused there, whichever it is', (name, value) => {
    const texts = fields.filter(({ shape }) => shape === 'text');
    const sums = run(
      texts.map((field) => ({ field, text: withReplaced(field.value, value), line: lineOf(field.value[0]) })),
    );
    note(name, sums);
    expect(sums.accepted).toEqual([]);
    expect(sums.inPlace).toBe(texts.length);
  });

  // In a free text these are words like any other; everywhere else they are refused where they stand.
  it.each(['<script>alert(1)</script>', '__proto__', '../../etc/passwd', '-1E+999 m'])(
    'with %s for a value is refused there, but in a text',
    (value) => {
      const texts = fields.filter(({ shape }) => shape === 'text');
      const sums = run(
        texts.map((field) => ({
          field,
          text: withReplaced(field.value, value),
          line: lineOf(field.value[0]),
        })),
      );
      note(value, sums);
      expect(sums.inPlace).toBe(sums.refused);
      const free =
        /^(name|builder\.(name|club)|photos\.(alt|file)|structure\.\w+|trim\.(turn|warps)|setups\.change)$|^motors\.(skein\.(lubricant|broken-in)|(thrust|torque)-log(\.file)?)$|^flights\.(changed|damage|note|release\.how)$|\.(section|surface)$/;
      expect(sums.accepted.filter((path) => !free.test(path))).toEqual([]);
    },
  );

  it('without one of its fields is refused where that is required, at what holds it', () => {
    const lines = new LineCounter();
    const refused: string[] = [];
    let inPlace = 0;
    for (const { path } of fields) {
      const document = parseDocument(frontMatter);
      document.deleteIn(path);
      const text = document.toString({ lineWidth: 0 });
      const errors = problemsOf(`---\n${text}---\n`).filter(({ severity }) => severity === 'error');
      if (errors.length === 0) continue;
      refused.push(path.filter((segment) => typeof segment === 'string').join('.'));
      const above = parseDocument(text, { lineCounter: lines }).getIn(path.slice(0, -1), true);
      const start = path.length === 1 ? -1 : ((above as Node | undefined)?.range?.[0] ?? -1);
      const line = start < 0 ? 1 : text.slice(0, start).split('\n').length + 1;
      if (errors.some((error) => Math.abs(error.line - line) <= 1)) inPlace += 1;
    }
    note('taken away', { mutations: fields.length, refused: refused.length, inPlace, accepted: [] });
    // Format 1: "Required: `name`, `builder`, `control`, `wing.span`, a mass, and at least one motor with its `count`", "a
    // flight needs `number`, `date`, and `time` or `watches`", and of what may be left out the parts that only go together.
    expect([...new Set(refused)].sort()).toEqual(
      [
        ...['name', 'builder', 'builder.handle', 'control', 'wing', 'wing.span', 'mass', 'mass.airframe'],
        ...['motors', 'motors.count', 'flights.number', 'flights.date', 'flights.time', 'flights.watches'],
        ...['wing.panels.length', 'wing.panels.root', 'wing.panels.tip', 'photos.file', 'photos.alt'],
        ...['motors.skein.strip.width', 'motors.skein.strip.thickness', 'motors.thrust-log.file'],
        ...['setups.id', 'setups.from'],
      ].sort(),
    );
    expect(inPlace).toBe(refused.length);
  });

  it('is never read without a problem where it is refused, and never throws', () => {
    console.info(
      `all: ${total.mutations} mutations, ${total.refused} refused, ${total.inPlace} in their line, 0 crashes`,
    );
    expect(total.mutations).toBeGreaterThan(1500);
    expect(total.inPlace).toBe(total.refused);
  });
});
