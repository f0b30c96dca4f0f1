import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { entry } from '../../../src/entries/schema/entry.ts';
import { toPlain } from '../../../src/entries/source/locate.ts';
import { readSource } from '../../../src/entries/source/read-source.ts';
import type { Path, Plain } from '../../../src/entries/source/source.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';
import { removingField, settingField } from '../../../src/entries/write/edit-field.ts';
import { rewrite } from '../../../src/entries/write/rewrite.ts';

const file = (fields: string): string => `---\n${fields}---\nWords.\n`;

function plain(text: string): Plain {
  const { source } = readSource('entry.md', text, splitPlain);
  if (source === null) throw new Error(`cannot be read: ${text}`);
  return toPlain(source.root);
}

/** The text once a field is set as the schema of an entry has it. */
function setIn(text: string, path: Path, value: Plain): string {
  const change = settingField(entry, plain(text), path, value);
  if (change === null) throw new Error('no place');
  const rewritten = rewrite('entry.md', text, [change]);
  if (!rewritten.ok) throw new Error(rewritten.why);
  return rewritten.text;
}

function removeIn(text: string, path: Path): string {
  const change = removingField(plain(text), path);
  if (change === null) throw new Error('nothing there');
  const rewritten = rewrite('entry.md', text, [change]);
  if (!rewritten.ok) throw new Error(rewritten.why);
  return rewritten.text;
}

describe('a field that is set', () => {
  it('stands where the content format lists it', () => {
    expect(
      setIn(file('name: A\n# the builder\nbuilder: b\nmass: { airframe: 1 g }\n'), ['fin', 'area'], '7 dm2'),
    ).toBe(file('name: A\n# the builder\nbuilder: b\nfin: { area: 7 dm2 }\nmass: { airframe: 1 g }\n'));
  });

  it('stands first where everything else comes behind it, above nothing but its follower', () => {
    expect(setIn(file('# mine\nbuilder: b\n'), ['name'], 'A')).toBe(file('# mine\nname: A\nbuilder: b\n'));
    expect(setIn(file('motors:\n  - hooks: 43 cm\n'), ['motors', 0, 'count'], '1')).toBe(
      file('motors:\n  - count: 1\n    hooks: 43 cm\n'),
    );
  });

  it('stands in its place in a map in braces', () => {
    expect(setIn(file('wing: { span: 2 m, chord: 20 cm }\n'), ['wing', 'area'], '40 dm2')).toBe(
      file('wing: { span: 2 m, area: 40 dm2, chord: 20 cm }\n'),
    );
    expect(setIn(file('wing: { chord: 20 cm }\n'), ['wing', 'span'], '2 m')).toBe(
      file('wing: { span: 2 m, chord: 20 cm }\n'),
    );
  });

  it('brings the maps and lists on the way with it', () => {
    expect(setIn(file('name: A\n'), ['motors', 0, 'skein', 'strip', 'width'], '1/8 in')).toBe(
      file('name: A\nmotors:\n  - skein:\n      strip: { width: 1/8 in }\n'),
    );
    expect(setIn(file('wing:\nname: A\n'), ['wing', 'span'], '2 m')).toContain('wing: { span: 2 m }');
  });

  it('is appended where the path leads one behind the last item', () => {
    expect(setIn(file('motors:\n  - count: 1\n'), ['motors', 1, 'count'], '2')).toBe(
      file('motors:\n  - count: 1\n  - { count: 2 }\n'),
    );
  });

  it('has no place in a text, or where a list would have a gap', () => {
    expect(settingField(entry, { wing: 'large' }, ['wing', 'span'], '2 m')).toBeNull();
    expect(settingField(entry, { motors: [] }, ['motors', 1, 'count'], '2')).toBeNull();
    expect(settingField(entry, {}, ['motors', 1, 'count'], '2')).toBeNull();
  });
});

describe('a field that is taken out', () => {
  it('takes along what held nothing else', () => {
    expect(removeIn(file('name: A\nwing: { section: { thin: yes } }\n'), ['wing', 'section', 'thin'])).toBe(
      file('name: A\n'),
    );
  });

  it('takes an item of a list with its lines', () => {
    const fields =
      'flights:\n  - number: 1\n    note: one # good\n  # above two\n  - { number: 2 }\nalso: c/e\n';
    expect(removeIn(file(fields), ['flights', 0])).toBe(
      file('flights:\n  # above two\n  - { number: 2 }\nalso: c/e\n'),
    );
    expect(removeIn(file('onboard: [release, locator, altimeter]\n'), ['onboard', 1])).toBe(
      file('onboard: [release, altimeter]\n'),
    );
    expect(removeIn(file('onboard: [release, release]\n'), ['onboard', 1])).toBe(
      file('onboard: [release]\n'),
    );
  });

  it('is nothing where there is none', () => {
    expect(removingField({ name: 'A' }, ['wing', 'span'])).toBeNull();
    expect(removingField({ name: 'A' }, [])).toBeNull();
  });
});

it('a field set and taken out again leaves the file as it was', () => {
  const files = [
    'name: A # mine\n\n# whose\nbuilder: { handle: b, name: B }\nmotors:\n- count: 1\n  skein: { strands: 6 }\n',
    'name: A\r\nwing:\r\n    panels:\r\n      - { length: 9 cm, root: 3 cm, tip: 2 cm } # in\r\nflights: []\r\n',
  ];
  const paths: Path[] = [
    ['wing', 'area'],
    ['fin', 'count'],
    ['balance'],
    ['entered'],
    ['trim', 'turn'],
    ['mass', 'parts', 'wing'],
    ['glides', 0, 'height'],
    ['withdrawn', 'reason'],
  ];
  fc.assert(
    fc.property(fc.constantFrom(...files), fc.constantFrom(...paths), fc.string(), (fields, path, value) => {
      const before = file(fields);
      fc.pre(value !== '' && removingField(plain(before), path) === null);
      const change = settingField(entry, plain(before), path, value);
      const set = change === null ? null : rewrite('entry.md', before, [change]);
      if (set?.ok !== true) throw new Error('no place');
      expect(removeIn(set.text, path)).toBe(before);
    }),
    { seed: 7, numRuns: 300 },
  );
});
