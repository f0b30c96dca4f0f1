import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import type { Plain } from '../../../src/entries/source/source.ts';
import type { Change } from '../../../src/entries/write/after.ts';
import { rewrite } from '../../../src/entries/write/rewrite.ts';

/** The text after the changes; fails where they are refused. */
function changed(text: string, ...changes: Change[]): string {
  const rewritten = rewrite('file.md', text, changes);
  if (!rewritten.ok) throw new Error(rewritten.why);
  return rewritten.text;
}
const file = (fields: string): string => `---\n${fields}---\nText, with --- in it.\n`;
const inFile = (fields: string, ...changes: Change[]): string => changed(file(fields), ...changes);
const set = (at: Change['at'], value: Plain): Change => ({ do: 'set', at, value });
const append = (at: Change['at'], value: Plain): Change => ({ do: 'append', at, value });
const remove = (at: Change['at']): Change => ({ do: 'remove', at });

describe('setting a field', () => {
  it('puts it in place of the old value and leaves the remark behind it', () => {
    expect(inFile('a: 1   # why\nb: 2\n', set(['a'], '7 s'))).toBe(file('a: 7 s   # why\nb: 2\n'));
  });

  it('puts a new one behind the last of its map, above a remark that follows', () => {
    const fields = 'm:\n    a: 1 # one\n    # below\n\nb: 2\n';
    expect(inFile(fields, set(['m', 'c'], '3'))).toBe(
      file('m:\n    a: 1 # one\n    c: 3\n    # below\n\nb: 2\n'),
    );
  });

  it('keeps a map in braces in braces, and an empty one too', () => {
    expect(inFile('m: { a: 1,  b: 2 }\ne: {}\n', set(['m', 'c'], 'x, y'), set(['e', 'd'], '4'))).toBe(
      file('m: { a: 1,  b: 2, c: "x, y" }\ne: { d: 4 }\n'),
    );
  });

  it('goes through lists by index', () => {
    expect(inFile('f:\n- n: 1\n  t: 2 s\n- n: 2\n  t: 3 s\n', set(['f', 1, 't'], '4 s'))).toBe(
      file('f:\n- n: 1\n  t: 2 s\n- n: 2\n  t: 4 s\n'),
    );
  });

  it('begins a file without fields', () => {
    expect(changed('---\n---\nText.\n', set(['a'], '1'))).toBe('---\na: 1\n---\nText.\n');
  });

  it('fills a key that has no value', () => {
    expect(inFile('a:\nb: 2\n', set(['a'], '1'))).toBe(file('a: 1\nb: 2\n'));
  });

  it('quotes what YAML would read otherwise', () => {
    expect(inFile('a: 1\n', set(['a'], 'Late: # no, "yes"'))).toBe(file('a: "Late: # no, \\"yes\\""\n'));
  });
});

describe('appending an item', () => {
  const flight = { number: '2', date: '2027-05-10', time: '12 s' };

  it('puts it behind the last of a block list, at its column', () => {
    expect(inFile('flights:\n- number: 1 # first\n\nb: 2\n', append(['flights'], flight))).toBe(
      file('flights:\n- number: 1 # first\n- { number: 2, date: 2027-05-10, time: 12 s }\n\nb: 2\n'),
    );
  });

  it('gives a field a line each where a map is nested or long', () => {
    const full = { ...flight, weather: { wind: '1 m/s', surface: 'dry' }, watches: ['41.6 s', '41.8 s'] };
    expect(inFile('flights:\n  - number: 1\n', append(['flights'], full))).toBe(
      file(
        'flights:\n  - number: 1\n  - number: 2\n    date: 2027-05-10\n    time: 12 s\n' +
          '    weather: { wind: 1 m/s, surface: dry }\n    watches: [41.6 s, 41.8 s]\n',
      ),
    );
  });

  it('begins the list where it is absent or empty', () => {
    const begun = file('a: 1\nflights:\n  - { number: 2, date: 2027-05-10, time: 12 s }\n');
    expect(inFile('a: 1\n', append(['flights'], flight))).toBe(begun);
    expect(inFile('a: 1\nflights: []\n', append(['flights'], flight))).toBe(begun);
    expect(inFile('a: 1\nflights:\n', append(['flights'], flight))).toBe(begun);
  });

  it('keeps a list in brackets in brackets', () => {
    expect(inFile('a: [x,  y] # two\n', append(['a'], 'z'))).toBe(file('a: [x,  y, z] # two\n'));
  });

  it('makes a list of the one map that stood for it', () => {
    const item = { by: 'otter', span: '3 m' };
    expect(inFile('i: { by: heron } # once\nb: 2\n', append(['i'], item))).toBe(
      file('i:\n  - { by: heron } # once\n  - { by: otter, span: 3 m }\nb: 2\n'),
    );
    expect(inFile('i:\n  by: heron\n  # tape\n  span: 2 m\nb: 2\n', append(['i'], item))).toBe(
      file('i:\n  - by: heron\n    # tape\n    span: 2 m\n  - { by: otter, span: 3 m }\nb: 2\n'),
    );
    expect(inFile('m: { i: { by: heron } }\n', append(['m', 'i'], item))).toBe(
      file('m: { i: [{ by: heron }, { by: otter, span: 3 m }] }\n'),
    );
  });

  it('makes a list of the one text that stood for it', () => {
    expect(inFile('seen: launch # only\n', append(['seen'], 'landing'))).toBe(
      file('seen: [launch, landing] # only\n'),
    );
  });
});

describe('removing a field', () => {
  it('takes its line, and nothing where there is none', () => {
    expect(inFile('a: 1\nb:\n  - 2 # two\n# rest\nc: 3\n', remove(['b']), remove(['x']))).toBe(
      file('a: 1\n# rest\nc: 3\n'),
    );
  });

  it('works in braces and for the first of an item', () => {
    expect(inFile('m: { a: 1, b: 2, c: 3 }\n', remove(['m', 'b']))).toBe(file('m: { a: 1, c: 3 }\n'));
    expect(inFile('l:\n  - a: 1\n    b: 2\n', remove(['l', 0, 'a']))).toBe(file('l:\n  - b: 2\n'));
  });
});

describe('what is never touched', () => {
  it('a byte order mark and line ends of another kind stay', () => {
    const text = '\uFEFF---\r\na: 1\r\nl:\r\n  - x\r\n---\r\nText.\r\n';
    expect(changed(text, set(['b'], '2'), append(['l'], 'y'), remove(['a']))).toBe(
      '\uFEFF---\r\nl:\r\n  - x\r\n  - y\r\nb: 2\r\n---\r\nText.\r\n',
    );
  });

  it('a file with a mistake: it says where the mistake is', () => {
    const refused = rewrite('file.md', '---\na: 1\na: 2\n---\n', [set(['b'], '2')]);
    expect(refused).toMatchObject({
      ok: false,
      why: 'file.md cannot be read, so nothing is written into it.',
      problems: [{ code: 'duplicate-key', line: 3 }],
    });
  });

  it('a place that is not there', () => {
    expect(rewrite('file.md', file('a: 1\n'), [set(['flights', 3, 'time'], '2 s')])).toEqual({
      ok: false,
      why: 'file.md has no place for `flights.4.time`.',
      problems: [],
    });
  });

  it('a value that cannot be changed without harm to what stands around it', () => {
    const refused = rewrite('file.md', file('l:\n- a\n- b\n'), [set(['l'], 'x')]);
    expect(refused).toMatchObject({ ok: false, problems: [] });
    expect(refused.ok ? '' : refused.why).toBe(
      'file.md is written in a way in which `l` cannot be changed without touching what stands around it. Write it there by hand.',
    );
  });
});

// The yaml package is the judge here: it reads what was written, and knows nothing of how it was written.
describe('whatever is written', () => {
  const texts = fc.oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }),
    fc.constantFrom(
      '# no',
      'a: b',
      '- x',
      '[a]',
      '{a: 1}',
      "it's",
      '"q"',
      '~',
      'null',
      'no',
      '1,5 m',
      'x:',
      ' y ',
      '38 %',
      '-3°',
    ),
  );
  // Characters that no content file may hold are refused by its reader, and a key by that name has no meaning.
  const text = texts.filter(
    (each) => !/[\p{Cc}\p{Cs}\u202A-\u202E\u2066-\u2069\uFEFF\u2028\u2029]/u.test(each),
  );
  const key = fc.stringMatching(/^[a-z][a-z-]{0,8}$/);
  const value: fc.Arbitrary<Plain> = fc.oneof(
    text,
    fc.array(text, { maxLength: 3 }),
    fc.dictionary(
      key,
      fc.oneof(text, fc.dictionary(key, text, { minKeys: 1, maxKeys: 3, noNullPrototype: true })),
      {
        minKeys: 1,
        maxKeys: 4,
        noNullPrototype: true,
      },
    ),
  );
  const before = '# head\nA:   1   # one\n\nflow: { a: [x,  y], b: 2 } # braces\n';
  const behind = 'flights:   # list\n  - number: 1\n    # inside\n    time: 3 s\n# tail\n';

  it('reads back as it was meant, in block and in braces', () => {
    fc.assert(
      fc.property(key, value, fc.constantFrom('block', 'flow'), (name, written, where) => {
        fc.pre(!['a', 'b', 'flow', 'flights'].includes(name));
        const path = where === 'block' ? [name] : ['flow', name];
        const text = inFile(before + behind, set(path, written));
        const fields = text.slice(4, text.indexOf('\n---\nText'));
        const read = parseDocument(fields, { schema: 'failsafe' }).toJS();
        expect(where === 'block' ? read[name] : read.flow[name]).toEqual(written);
      }),
      { seed: 20270509, numRuns: 500 },
    );
  });

  it('leaves every letter outside of it as it was', () => {
    fc.assert(
      fc.property(value, fc.boolean(), (written, isCrlf) => {
        const ends = (each: string) => (isCrlf ? each.replaceAll('\n', '\r\n') : each);
        const old = ends(file(before + behind));
        const text = changed(old, append(['flights'], written));
        const at = old.indexOf('time: 3 s') + 'time: 3 s'.length;
        expect(text.startsWith(old.slice(0, at))).toBe(true);
        expect(text.endsWith(old.slice(at))).toBe(true);
      }),
      { seed: 20270509, numRuns: 500 },
    );
  });

  it('is gone when it is taken out again', () => {
    fc.assert(
      fc.property(key, value, (name, written) => {
        fc.pre(!['flow', 'flights'].includes(name));
        expect(inFile(before + behind, set([name], written), remove([name]))).toBe(file(before + behind));
      }),
      { seed: 20270509, numRuns: 300 },
    );
  });
});

describe('a value that is spread', () => {
  it('gets a line for each field of its maps, and texts stay together', () => {
    const value = { width: '1/8 in', at: ['1 m', '2 m'], inner: { a: 'b' } };
    const rewritten = rewrite('entry.md', '---\nname: A\n---\n', [
      { do: 'set', at: ['strip'], value, spread: true },
      { do: 'append', at: ['flights'], value: { number: '1' }, spread: true },
      { do: 'append', at: ['flights'], value: { number: '2', date: '2027-05-09' }, spread: true },
    ]);
    expect(rewritten).toEqual({
      ok: true,
      text: [
        '---',
        'name: A',
        'strip:',
        '  width: 1/8 in',
        '  at: [1 m, 2 m]',
        '  inner:',
        '    a: b',
        'flights:',
        '  - number: 1',
        '  - number: 2',
        '    date: 2027-05-09',
        '---',
        '',
      ].join('\n'),
    });
  });
});
