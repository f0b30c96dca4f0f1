import { describe, expect, it } from 'vitest';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { contentOf, entryFile } from './content-folder.ts';
import { allTold, entryOf, smallestEntry, told } from './written.ts';

// Where a key belongs and what a form looks like is content format 1; that these slips are made is common practice, no
// source; the wording is this project's own. The smallest entry fills lines 2 to 7.

const changed = (before: string, after: string) => allTold(entryOf(smallestEntry.replace(before, after)));

describe('a key in another place than its own', () => {
  it('is told once, with the place where it is required', () => {
    expect(changed('wing: { span: 1.2 m }', 'wing: { chord: 12 cm }\nspan: 1.2 m')).toEqual([
      '6:1 unknown-key: `span` is not known here: it belongs in `wing`. Write it like `wing: { span: 1.2 m }`.\n-> wing: { span: 1.2 m }',
    ]);
  });

  it('is known by its map and its own name together', () => {
    expect(changed('wing: { span: 1.2 m }', 'wing span: 1.2 m')).toEqual([
      '5:1 unknown-key: `wing span` is not known here: it belongs in `wing`, as `span`. Write it like `wing: { span: 1.2 m }`.\n-> wing: { span: 1.2 m }',
    ]);
  });

  it('may be a whole map', () => {
    expect(allTold(entryOf(`${smallestEntry}\nparts: { wing: 20 g }`))).toEqual([
      '8:1 unknown-key: `parts` is not known here: it belongs in `mass`. Write it like `mass: { parts: … }`.',
    ]);
    expect(allTold(entryOf(`${smallestEntry}\npropeller: { blades: 2 }`))).toEqual([
      '8:1 unknown-key: `propeller` is not known here: it belongs in an item of `motors`.',
    ]);
  });

  it('may belong further out', () => {
    const skein = '{ count: 2, skein: { length: 30 cm, mass: 5 g, break-turns: 900 } }';
    expect(changed('{ count: 2 }', skein)).toEqual([
      '7:57 unknown-key: `skein.break-turns` in motor 1 is not known here: it belongs further out, beside `skein`.',
    ]);
    expect(changed('span: 1.2 m', 'span: 1.2 m, balance: 8 cm')).toEqual([
      '5:22 unknown-key: `wing.balance` is not known here: it belongs at the top of the file, without indentation.',
    ]);
  });

  it('in a setup belongs into that setup', () => {
    const setup = 'setups: [{ id: b, from: 2027-06-10, airframe: 90 g }]';
    expect(allTold(entryOf(`${smallestEntry}\n${setup}`))[0]).toContain(
      '`airframe` in setup b is not known here: it belongs in `mass`. Write it like `mass: { airframe: 90 g }`.',
    );
  });
});

describe('a blade angle', () => {
  const propeller = (fields: string) => changed('{ count: 2 }', `{ count: 2, propeller: { ${fields} } }`);

  it('is written with its radius', () => {
    expect(propeller('pitch: 28° at 150 mm')).toEqual([
      '7:42 wrong-shape: `propeller.pitch` in motor 1: "28° at 150 mm" is a blade angle. Write it as "{ angle: 28°, at: 150 mm }".\n-> { angle: 28°, at: 150 mm }',
    ]);
    expect(propeller('pitch: 28°')).toEqual([
      '7:42 wrong-shape: `propeller.pitch` in motor 1: "28°" is a blade angle, which gives a pitch only with the radius at which it was measured. Write it like `{ angle: 28°, at: 150 mm }`.',
    ]);
    expect(propeller('pitch: { angle: 28°, at: 150 mm }')).toEqual([]);
  });

  it('is a pitch, under whatever name', () => {
    expect(propeller('blade-angle: 31°')).toEqual([
      '7:35 unknown-key: `propeller.blade-angle` in motor 1 is not known here: it belongs in `pitch`, as `angle`. Write it like `pitch: { angle: 31°, at: 110 mm }`.\n-> pitch: { angle: 31°, at: 110 mm }',
    ]);
    expect(propeller('angle: 31°')[0]).toContain('Write it like `pitch: { angle: 31°, at: 110 mm }`.');
  });
});

describe('a time without a unit', () => {
  const time = (text: string) =>
    allTold(entryOf(`${smallestEntry}\nflights: [{ number: 1, date: 2027-05-09, time: ${text} }]`));

  it('may be minutes and seconds', () => {
    expect(time('1.05')).toEqual([
      '8:48 missing-unit: `time` in flight 1: "1.05" has no unit. Write "1.05 s" for seconds, or "1:05" for minutes and seconds.',
    ]);
  });

  it('cannot be those with 70 seconds', () => {
    expect(time('1.70')[0]).not.toContain('1:70');
  });
});

describe('typographic quotes', () => {
  const found = (frontMatter: string) => {
    const { problems } = readSource('entry.md', `---\n${frontMatter}\n---\n`, splitPlain);
    return problems.map(told);
  };

  it('around a value are told not to be those of YAML', () => {
    expect(found('name: “Plover”')).toEqual([
      '2:7 typographic-quotes: The quotes around “Plover” are not those of YAML, so they stay in the text. Write "Plover" with straight ones, or leave them out.\n-> "Plover"',
    ]);
    expect(found('name: „Plover“')).toHaveLength(1);
  });

  it('do not hold a comma together', () => {
    expect(found('photos: [{ file: a.jpg, alt: “Mothwing on the table, wings, tissue still wet” }]')).toEqual(
      [
        '2:30 key-without-value: The quotes around “Mothwing on the table, wings, tissue still wet” are not those of YAML, which splits the text at its comma. Write "Mothwing on the table, wings, tissue still wet" with straight ones.\n-> "Mothwing on the table, wings, tissue still wet"',
      ],
    );
  });

  it('belong to a text that goes on, or stands in straight ones', () => {
    expect(found('note: “Fine,” he said, and “Good.”\nname: "“Plover”"')).toEqual([]);
  });
});

describe('a file under another name than the one written', () => {
  it('is told once, where it is named', async () => {
    const { problems } = await contentOf({
      'entries/haul/teal/entry.md': entryFile(
        'Teal',
        'photos: [{ file: bensh.jpg, alt: The model on the bench }]',
      ).replace('[{ count: 2 }]', '[{ count: 2, thrust-log: Trust.csv }]'),
      'entries/haul/teal/bench.jpg': 'not looked at',
      'entries/haul/teal/thrust.csv': 'time [s],thrust [g]\n0,1\n1,0\n',
      'entries/haul/teal/spare.csv': 'time [s],thrust [g]\n0,1\n1,0\n',
    });
    expect(problems.map(({ code, suggestion }) => [code, suggestion])).toEqual([
      ['log-missing', 'thrust.csv'],
      ['photo-missing', 'bench.jpg'],
      ['unused-file', null],
    ]);
  });
});

describe('a name that is refused in many flights', () => {
  it('is told once, with the number of the others', () => {
    const flights = [1, 2, 3].map(
      (number) => `  - { number: ${number}, date: 2027-05-09, time: 12 s, timekeepers: [A. Otter, heron] }`,
    );
    expect(allTold(entryOf([smallestEntry, 'flights:', ...flights].join('\n')))).toEqual([
      '9:62 not-a-slug: item 1 of `timekeepers` in flight 1: "A. Otter" has characters that have no place in an address, or too many. Write a name of a to z, digits and hyphens, at most 64 characters, such as amarsh or fen-a. Did you mean "a-otter"? It stands in 2 more flights.\n-> a-otter',
    ]);
  });
});
