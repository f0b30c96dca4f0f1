import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkFrame } from '../../../src/entries/source/frame.ts';
import { lineStarts } from '../../../src/entries/source/line-index.ts';
import { locate, toPlain } from '../../../src/entries/source/locate.ts';
import { readJsonSource, readSource } from '../../../src/entries/source/read-source.ts';
import { splitFile } from '../../../src/entries/source/split-file.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';

function read(text: string) {
  return readSource('entry.md', text, splitPlain);
}

function plainOf(text: string): unknown {
  const { source, problems } = read(text);
  expect(problems).toEqual([]);
  return source === null ? null : JSON.parse(JSON.stringify(toPlain(source.root)));
}

/** `code line:column-endLine:endColumn` of every problem. */
function problemsOf(text: string): string[] {
  return read(text).problems.map((p) => `${p.code} ${p.line}:${p.column}-${p.endLine}:${p.endColumn}`);
}

function front(yaml: string): string {
  return `---\n${yaml}\n---\n`;
}

describe('values', () => {
  it('stay the text that was written, whatever YAML would make of it', () => {
    // YAML 1.1 would read 2:31 as 151, 012 as 10, yes as true and the day as a date (yaml.org/type).
    expect(plainOf(front('a: 2:31\nb: 012\nc: 2026-01-02\nd: yes\ne: ~\nf:\ng: 0x1F\nh: 1e3'))).toEqual({
      a: '2:31',
      b: '012',
      c: '2026-01-02',
      d: 'yes',
      e: '~',
      f: '',
      g: '0x1F',
      h: '1e3',
    });
  });

  it('resolve quotes and blocks as YAML 1.2.2 chapters 7.3 and 8.1 say', () => {
    expect(plainOf(front("a: \"1/8\\\" x\"\nb: 'it''s'\nc: |\n  one\n  two\nd: >\n  one\n  two"))).toEqual({
      a: '1/8" x',
      b: "it's",
      c: 'one\ntwo\n',
      d: 'one two\n',
    });
  });

  it('are the same with CRLF and a byte order mark', () => {
    const lf = '---\na: 1\nb: {c: x, d: [y, z]}\ne: last\n---\nbody\n';
    expect(plainOf(`\ufeff${lf.replaceAll('\n', '\r\n')}`)).toEqual(plainOf(lf));
  });

  it('named like parts of every object are ordinary', () => {
    const { source } = read(front('__proto__: {polluted: yes}\nconstructor: a\ntoString: b'));
    const plain = source === null ? {} : (toPlain(source.root) as Record<string, unknown>);
    expect(Object.keys(plain)).toEqual(['__proto__', 'constructor', 'toString']);
    expect(Object.getPrototypeOf(plain)).toBeNull();
    expect('polluted' in {}).toBe(false);
  });

  it('may be absent altogether', () => {
    expect(plainOf('---\n---\n')).toEqual({});
    expect(plainOf('---\n# nothing yet\n---')).toEqual({});
  });
});

describe('the body', () => {
  it('begins after the line that closes the front matter', () => {
    for (const split of [splitPlain, splitFile]) {
      const { source } = readSource('entry.md', '---\r\na: 1\r\n---\r\nText\r\n---\r\nmore', split);
      expect(source?.body).toBe('Text\r\n---\r\nmore');
      expect(source?.text.slice(source.bodyStart)).toBe(source?.body);
    }
  });
});

describe('places', () => {
  const text =
    '\ufeff---\r\nname: Käuz\r\nwing:\r\n\u0020 span: 3.2 m\r\nempty:\r\nwatches: [1 s, 2 s]\r\n---\r\n';
  const { source } = read(text);
  const at = (path: (string | number)[], part: 'key' | 'value' = 'value') => {
    if (source === null) throw new Error('unread');
    const place = locate(source, path, part);
    return `${place.line}:${place.column}-${place.endLine}:${place.endColumn}`;
  };

  it('of keys and values are counted in the file', () => {
    expect(at(['name'], 'key')).toBe('2:1-2:5');
    expect(at(['name'])).toBe('2:7-2:11');
    expect(at(['wing', 'span'])).toBe('4:9-4:14');
    expect(at(['watches', 1])).toBe('6:16-6:19');
  });

  it('of an empty value are its key', () => {
    expect(at(['empty'])).toBe('5:1-5:6');
  });

  it('of what is missing are the nearest field above it', () => {
    expect(at(['wing', 'area'])).toBe('3:1-3:5');
    expect(at(['fin'])).toBe('1:1-1:4');
    expect(at(['watches', 7])).toBe('6:1-6:8');
  });

  it('of one value where the schema wanted a list, or a map, are the value', () => {
    expect(at(['name', 0])).toBe('2:7-2:11');
    expect(at(['name', 'handle'])).toBe('2:7-2:11');
    expect(at(['wing', 0, 'span'])).toBe('4:9-4:14');
  });
});

describe('a frame that splitters would read differently', () => {
  it('is refused', () => {
    expect(problemsOf('')).toEqual(['no-front-matter 1:1-1:1']);
    expect(problemsOf('--- \na: 1\n---\n')).toEqual(['no-front-matter 1:1-1:5']);
    expect(problemsOf('---js\nglobalThis.broken = 1\n---\n')).toEqual(['no-front-matter 1:1-1:6']);
    expect(problemsOf('----\na: 1\n---\n')).toEqual(['no-front-matter 1:1-1:5']);
    expect(problemsOf('---\na: 1\n')).toEqual(['front-matter-not-closed 1:1-1:4']);
    expect(problemsOf('---\na: 1\n----\n')).toEqual(['front-matter-not-closed 3:1-3:5']);
    expect(problemsOf('---\na: 1\n---foo\n')).toEqual(['front-matter-not-closed 3:1-3:7']);
  });

  it('says what stands there', () => {
    expect(read('---yaml\na: 1\n---\n').problems[0]?.message).toBe(
      'The file must begin with the line `---`, alone and without spaces; its first line is "---yaml".',
    );
    expect(read('---\na: 1\n---foo\n').problems[0]?.message).toBe(
      'The line that ends the front matter must be `---`, alone and without spaces; it is "---foo".',
    );
  });

  it('never runs code in the file', () => {
    readSource('entry.md', '---js\n{ x: (globalThis.ranFromFile = 1) }\n---\n', splitFile);
    expect('ranFromFile' in globalThis).toBe(false);
  });
});

describe('what YAML allows and this format does not', () => {
  it('is reported where it stands', () => {
    expect(problemsOf(front('a: &x 1\nb: *x'))).toEqual(['yaml-anchor 2:4-2:6', 'yaml-anchor 3:4-3:6']);
    expect(problemsOf(front('a: !!js/function "x"'))).toEqual(['yaml-tag 2:4-2:17']);
    expect(problemsOf(front('<<: {a: 1}'))).toEqual(['merge-key 2:1-2:3']);
    expect(problemsOf(front('a: 1\n...\nb: 2'))).toEqual(['second-document 3:1-3:4']);
    expect(problemsOf(front('%YAML 1.1\na: 1'))).toEqual(['yaml-syntax 2:1-2:10']);
    expect(problemsOf(front('? [a]\n: b'))).toEqual(['key-not-text 2:3-2:6']);
    expect(problemsOf(front('- a'))).toEqual(['front-matter-not-fields 2:1-2:4']);
    expect(problemsOf(front('words only'))).toEqual(['front-matter-not-fields 2:1-2:11']);
  });

  it('a key that stands twice names the first', () => {
    const [problem] = read(front('span: 1 m\narea: 2\nspan: 3 m')).problems;
    expect(problem).toMatchObject({
      code: 'duplicate-key',
      line: 4,
      column: 1,
      related: { line: 2, column: 1 },
    });
    expect(problem?.message).toBe('`span` stands twice here, first in line 2: keep one of the two.');
  });

  it('nesting ends at 8', () => {
    const nested = (depth: number) => front(`a: ${'['.repeat(depth - 1)}x${']'.repeat(depth - 1)}`);
    expect(problemsOf(nested(8))).toEqual([]);
    expect(problemsOf(nested(9))).toEqual(['nested-too-deeply 2:11-2:11']);
  });

  it('brackets without end neither crash nor hang', () => {
    expect(problemsOf(front('['.repeat(100_000)))[0]).toMatch(/^nested-too-deeply/);
    expect(problemsOf(front('{a: '.repeat(50_000)))[0]).toMatch(/^nested-too-deeply/);
  });
});

describe('a decimal comma in brackets', () => {
  it('is put together again and offered with a point', () => {
    const { source, problems } = read(front('weather: {wind: 1,5 m/s, surface: dry}'));
    expect(source && JSON.stringify(toPlain(source.root))).toBe(
      '{"weather":{"wind":"1,5 m/s","surface":"dry"}}',
    );
    expect(problems).toMatchObject([
      {
        code: 'comma-in-braces',
        line: 2,
        column: 17,
        endColumn: 24,
        found: '1,5 m/s',
        suggestion: '1.5 m/s',
      },
    ]);
    expect(problems[0]?.message).toBe(
      'Inside { } and [ ] YAML splits "1,5 m/s" at its comma: write 1.5 m/s with a decimal point, or put it in quotes.',
    );
  });

  it('is seen in a list, where a list of whole numbers stays one', () => {
    expect(problemsOf(front('watches: [41,62 s, 41,80 s]'))).toHaveLength(2);
    expect(plainOf(front('turns: [640,650]'))).toEqual({ turns: ['640', '650'] });
    expect(plainOf(front('turns: [640,54 x 10]'))).toEqual({ turns: ['640', '54 x 10'] });
  });

  it('has two readings where the digits stand in threes, and is not told of twice', () => {
    const written = front('mass: { airframe: 1,200 g }');
    expect(
      read(written).problems.map(({ code, message, suggestion }) => [code, message, suggestion]),
    ).toEqual([
      [
        'comma-in-braces',
        'Inside { } and [ ] YAML splits "1,200 g" at its comma: it can be read in two ways, so write 1.200 g or 1200 g.',
        null,
      ],
    ]);
    const { source } = read(written);
    expect(source === null ? null : toPlain(source.root)).toEqual({ mass: { airframe: '1200 g' } });
  });

  it('a word in braces without a value is another matter', () => {
    expect(problemsOf(front('a: {clean}'))).toEqual(['key-without-value 2:5-2:10']);
  });
});

describe('what the YAML reader cannot read', () => {
  it.each([
    ['name Reedling\nbuilder: x', 'A line has no colon after its key'],
    ['name: a: b', 'A second colon stands on this line'],
    ['name: "a\nb: 1', 'A quote is opened and never closed.'],
    ['a: [1, 2\nb: 3', 'The indentation does not fit'],
    ['a:\n\tb: 1', 'A tab indents this line: indent with spaces.'],
    ['a: > 3 m', 'A value cannot begin with `>` or `|`'],
    ['a: |b', 'A value cannot begin with `>` or `|`'],
    ['a: - b', 'A list begins on the line of its key'],
    [' a: b\nc: d', 'This line does not go on with what stands above it'],
    ['a: @x', 'A value cannot begin with this character'],
    ['a: "\\q"', 'Inside double quotes a backslash begins a code'],
  ])('is said in plain words: %j', (yaml, sentence) => {
    const [problem] = read(front(yaml)).problems;
    expect(problem?.code).toBe('yaml-syntax');
    expect(problem?.message.startsWith(sentence)).toBe(true);
    expect(problem?.message.endsWith('The front matter cannot be read from here on.')).toBe(true);
  });

  it('is told once, where it begins', () => {
    expect(problemsOf(front('name: "a\nb: 1\nc: 2'))).toEqual(['yaml-syntax 2:7-2:8']);
    expect(problemsOf(front("a: [b, 'c]\nd: e"))).toEqual(['yaml-syntax 2:8-2:9']);
    expect(problemsOf(front(' a: 1\nb: 2\nc: 3\nd: 4'))).toEqual(['yaml-syntax 3:1-3:2']);
    expect(problemsOf(front('a:\n\tb: 1\n\tc: 2'))).toEqual(['yaml-syntax 3:1-3:2']);
  });
});

describe('characters that cannot be seen', () => {
  it('at the ends of all lines are one mistake', () => {
    expect(problemsOf('---\ra: x\rb: y\r---\rText.\r')).toEqual(['forbidden-character 1:1-1:1']);
    expect(problemsOf('---\r\na: x\r\n---\r\nText.')).toEqual([]);
  });

  it('are refused with their place, in fields and in the text', () => {
    expect(problemsOf('---\na: x\u202ey\n---\n\u0007')).toEqual([
      'forbidden-character 2:5-2:6',
      'forbidden-character 4:1-4:2',
    ]);
    expect(read('---\na: x\u202ey\n---\n').problems[0]?.message).toBe(
      'The character U+202E is not accepted (a character that changes the direction of the text unseen): delete it.',
    );
    expect(problemsOf('---\na: 1\rb: 2\n---\n')).toContain('forbidden-character 2:5-2:6');
  });

  it('do not include tabs, accents and pictures', () => {
    expect(problemsOf('---\na: "Šárka 🛩\tΩ"\n---\n👩‍🔧 text\n')).toEqual([]);
  });
});

describe('sizes', () => {
  it('of front matter end at 256 kB and of a file at 1 MB, counted in bytes', () => {
    expect(problemsOf(front(`a: ${'x'.repeat(255_990)}`))).toEqual([]);
    expect(problemsOf(front(`a: ${'é'.repeat(128_001)}`))).toEqual(['front-matter-too-large 1:1-1:1']);
    expect(problemsOf(`---\na: 1\n---\n${'x'.repeat(999_980)}`)).toEqual([]);
    expect(problemsOf(`---\na: 1\n---\n${'x'.repeat(1_000_000)}`)).toEqual(['file-too-large 1:1-1:1']);
  });
});

describe('a JSON file', () => {
  it('is read with a place for every field', () => {
    const { source } = readJsonSource(
      'results/a.json',
      '{\n  "format": 1,\n  "standings": [ { "place": 1 } ]\n}\n',
    );
    if (source === null) throw new Error('unread');
    expect(locate(source, ['standings', 0, 'place'], 'value')).toMatchObject({ line: 3, column: 29 });
  });

  it('that is none is refused', () => {
    expect(readJsonSource('results/a.json', '{a: 1}').problems[0]?.code).toBe('not-json');
  });
});

describe('any text whatever', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      '---',
      '\n',
      '\r\n',
      '\r',
      ': ',
      '- ',
      '[',
      ']',
      '{',
      '}',
      ',',
      '&a',
      '*a',
      '!t',
      '"',
      "'",
      '|',
      '>',
      '#',
      '%',
      '\t',
      '  ',
      '? ',
      '<<',
      '...',
      '\ufeff',
      '\u202e',
      '\ud800',
      'key',
      '1,5 m',
      '----',
      '---x',
    ),
    fc.string({ maxLength: 6 }),
  );
  const anyText = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''));
  const framed = fc
    .tuple(anyText, anyText, fc.constantFrom('\n', '\r\n'))
    .map(([a, b, end]) => `---${end}${a}${end}---${end}${b}`);

  it('is read without throwing, with every place inside it', () => {
    fc.assert(
      fc.property(fc.oneof(anyText, framed), (text) => {
        const { source, problems } = readSource('entry.md', text, splitFile);
        const lines = text.replace(/^\ufeff/, '').split('\n');
        for (const { line, column, endLine, endColumn } of problems) {
          expect(line).toBeLessThanOrEqual(endLine);
          expect(column).toBeLessThanOrEqual((lines[line - 1]?.length ?? -1) + 1);
          expect(endColumn).toBeLessThanOrEqual((lines[endLine - 1]?.length ?? -1) + 1);
        }
        if (problems.length === 0) expect(source).not.toBeNull();
      }),
      { seed: 20270509, numRuns: 2000 },
    );
  });

  it('is split alike by gray-matter and by the plain splitter', () => {
    let compared = 0;
    fc.assert(
      fc.property(framed, (text) => {
        if (checkFrame({ file: 'a', text, lines: lineStarts(text) }) !== null) return;
        compared += 1;
        expect(splitPlain(text)).toEqual(splitFile(text));
      }),
      { seed: 20270509, numRuns: 2000 },
    );
    expect(compared).toBeGreaterThan(500);
  });
});
