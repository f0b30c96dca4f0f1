import { describe, expect, it } from 'vitest';
import { checked } from '../../../src/client/enter/checked.ts';
import { puttingField } from '../../../src/client/enter/put-field.ts';
import type { Path, Plain } from '../../../src/entries/source/source.ts';
import { rewrite } from '../../../src/entries/write/rewrite.ts';

const file = (fields: string): string => `---\n${fields}---\n`;

/** The fields of an entry after values are put in some of them, one after another. */
function put(fields: string, ...values: readonly (readonly [Path, Plain | null])[]): string {
  let text = file(fields);
  for (const [path, value] of values) {
    const { plain } = checked(text, { challenge: 'c', id: 'e' });
    const changes = plain === null ? null : puttingField(plain, path, value);
    if (changes === null) throw new Error(`no place for ${path.join('.')}`);
    const rewritten = rewrite('entry.md', text, changes);
    if (!rewritten.ok) throw new Error(rewritten.why);
    text = rewritten.text;
  }
  return text.slice(4, -4);
}

describe('a value put in a field', () => {
  it('begins a file, each field in its place and on a line of its own', () => {
    expect(
      put(
        '',
        [['motors', 0, 'count'], '2'],
        [['wing', 'span'], '3.2 m'],
        [['wing', 'panels', 0, 'length'], '900 mm'],
        [['wing', 'panels', 0, 'root'], '300 mm'],
        [['name'], 'Reedling'],
        [['motors', 0, 'skein', 'strip', 'width'], '1/8 in'],
      ),
    ).toBe(
      [
        'name: Reedling',
        'wing:',
        '  span: 3.2 m',
        '  panels:',
        '    - length: 900 mm',
        '      root: 300 mm',
        'motors:',
        '  - count: 2',
        '    skein:',
        '      strip:',
        '        width: 1/8 in',
        '',
      ].join('\n'),
    );
  });

  it('stands for the list of it while it is alone', () => {
    expect(put('', [['motors', 0, 'at', 0], '420 mm'])).toBe('motors:\n  - at: 420 mm\n');
    expect(put('motors:\n  - at: 420 mm\n', [['motors', 0, 'at', 0], '43 cm'])).toBe(
      'motors:\n  - at: 43 cm\n',
    );
    expect(put('motors:\n  - at: 420 mm\n', [['motors', 0, 'at', 1], '80 cm'])).toBe(
      'motors:\n  - at: [420 mm, 80 cm]\n',
    );
  });

  it('stands in a list where only a list may', () => {
    expect(put('', [['flights', 0, 'watches', 0], '41.6 s'], [['flights', 0, 'watches', 1], '41,8 s'])).toBe(
      'flights:\n  - watches: [41.6 s, "41,8 s"]\n',
    );
  });

  it('stands for the map of which it is the one field that must be there', () => {
    expect(put('', [['builder', 0, 'handle'], 'amarsh'])).toBe('builder: amarsh\n');
    expect(put('builder: amarsh\n', [['builder', 0, 'handle'], 'bwren'])).toBe('builder: bwren\n');
  });

  it('makes way for a map, and for a list, where more is said', () => {
    expect(put('builder: amarsh\n', [['builder', 0, 'name'], 'A. Marsh'])).toBe(
      'builder:\n  handle: amarsh\n  name: A. Marsh\n',
    );
    expect(put('builder: amarsh\n', [['builder', 1, 'handle'], 'bwren'])).toContain('amarsh');
    expect(
      put('motors:\n  - count: 1\n    thrust-log: a.csv\n', [['motors', 0, 'thrust-log', 'turns'], '540']),
    ).toBe('motors:\n  - count: 1\n    thrust-log:\n      file: a.csv\n      turns: 540\n');
  });

  it('is refused where a text stands in the way', () => {
    const { plain } = checked(file('wing: large\n'), { challenge: 'c', id: 'e' });
    expect(puttingField(plain ?? '', ['wing', 'span'], '3 m')).toBe(null);
  });
});

describe('a value taken out', () => {
  it('takes with it what held nothing else', () => {
    expect(put('name: A\nwing:\n  span: 3 m\n', [['wing', 'span'], null])).toBe('name: A\n');
    expect(put('name: A\nbuilder: amarsh\n', [['builder', 0, 'handle'], null])).toBe('name: A\n');
    expect(put('motors:\n  - count: 1\n    at: 420 mm\n', [['motors', 0, 'at', 0], null])).toBe(
      'motors:\n  - count: 1\n',
    );
  });

  it('changes nothing where there is none', () => {
    expect(put('name: A\n', [['wing', 'span'], null], [['builder', 0, 'name'], null])).toBe('name: A\n');
  });
});
