import { describe, expect, it } from 'vitest';
import { understandSite } from '../../src/entries/understand/site.ts';
import {
  allTold,
  batchOf,
  challengeOf,
  entryOf,
  rulingOf,
  smallestChallenge,
  smallestEntry,
  sourceOf,
} from './written.ts';

// The messages are this project's own; what is accepted and what is refused is content format 1. Places were counted
// by hand: the first line of front matter is line 2, the smallest entry fills lines 2 to 7.

/** The smallest entry with more lines behind it, from line 8 on. */
const more = (lines: string) => allTold(entryOf(`${smallestEntry}\n${lines}`));

describe('a field of an entry', () => {
  it('is asked for where it is required, at what should hold it', () => {
    expect(allTold(entryOf(smallestEntry.replace('name: Plover\n', '')))).toEqual([
      '1:1 missing-field: `name` is missing: of the aircraft. Write it like `name: Reedling`.\n-> name: Reedling',
    ]);
    expect(allTold(entryOf(smallestEntry.replace('{ count: 2 }', '{ hooks: 300 mm }')))).toEqual([
      '7:12 missing-field: `count` in motor 1 is missing: how many motors of this kind the model has. Write it like `count: 2`.\n-> count: 2',
    ]);
  });

  it('needs a value', () => {
    expect(more('nose:')).toEqual([
      '8:1 empty-field: `nose`: nothing is written here; leave it out where you have nothing to say. Write it like `nose: 310 mm`.\n-> nose: 310 mm',
    ]);
    expect(more('fin:')).toEqual([
      '8:1 empty-field: `fin`: nothing is written here; leave it out where you have nothing to say. Write it like `fin: { area: 7 dm2, arm: 1.4 m, count: 1 }`.\n-> fin: { area: 7 dm2, arm: 1.4 m, count: 1 }',
    ]);
    expect(allTold(entryOf(smallestEntry.replace('amarsh', '[]')))).toEqual([
      '3:10 empty-field: `builder`: nothing is written here, and it is required. Write it like `builder: { handle: amarsh, name: A. Marsh, club: Fenside Flyers }`.\n-> builder: { handle: amarsh, name: A. Marsh, club: Fenside Flyers }',
    ]);
    expect(allTold(entryOf(smallestEntry.replace('[{ count: 2 }]', '[]')))).toEqual([
      '7:9 empty-field: `motors`: nothing is written here, and it is required. Write it like `motors: [{ count: 2, rotation: clockwise }]`.\n-> motors: [{ count: 2, rotation: clockwise }]',
    ]);
  });

  it('has a name that is known; a near miss is told once, with the name that was meant', () => {
    expect(allTold(entryOf(smallestEntry.replace('span', 'spam')))).toEqual([
      '5:9 unknown-key: `wing.spam` is not a known key. Did you mean `span`?\n-> span',
    ]);
    expect(more('fin: { colour: red }')).toEqual([
      '8:8 unknown-key: `fin.colour` is not a known key. Known here: area, arm, count.',
    ]);
  });

  it('is no name of an object of the language', () => {
    expect(
      more('fin: { constructor: 1, toString: 2, __proto__: 3 }').map((told) => told.slice(0, 16)),
    ).toEqual(['8:8 unknown-key:', '8:24 unknown-key', '8:37 unknown-key']);
  });

  it('has a shape of its own', () => {
    expect(more('origin: [own]')).toEqual([
      '8:9 wrong-shape: `origin` should be a single value, but a list is written. Write it like `origin: own`.\n-> origin: own',
    ]);
    expect(more('trim: left')).toEqual([
      '8:7 wrong-shape: `trim` should be a map of keys and values, but "left" is written. Write it like `trim: { turn: left under power and in the glide, down-thrust: 3° }`.\n-> trim: { turn: left under power and in the glide, down-thrust: 3° }',
    ]);
  });

  it('in a setup may not be one that holds for the whole entry', () => {
    expect(more('setups:\n  - { id: b, from: 2027-06-10, name: Plover II }')).toEqual([
      "9:32 key-not-here: `name` in setup b can't stand here: an aircraft keeps its name; give a differently named one an entry of its own.",
    ]);
  });

  it('may take a word of a closed set only', () => {
    expect(more('onboard: [release, dethermalizer]')).toEqual([
      '8:20 unknown-word: item 2 of `onboard`: "dethermalizer" is not a word known here. Write release, dethermaliser, locator, altimeter or stabiliser. Did you mean "dethermaliser"?\n-> dethermaliser',
    ]);
  });
});

describe('a list', () => {
  it('is put in brackets where its items would be right', () => {
    expect(more('onboard: release, dethermaliser')).toEqual([
      '8:10 wrong-shape: `onboard`: "release, dethermaliser" is read as one value. Write several in brackets, `[release, dethermaliser]`.\n-> [release, dethermaliser]',
    ]);
    const turns =
      'flights:\n  - { number: 1, date: 2027-05-09, time: 12 s }\n  - number: 2\n    date: 2027-05-09\n    time: 12 s';
    expect(more(`${turns}\n    turns: 540, 54 x 10`)[0]).toMatch(/^13:12 wrong-shape: .* `\[540, 54 x 10\]`/);
    expect(more('onboard: release, gps')[0]).toMatch(/^8:10 unknown-word/);
  });

  it('shows in an item of another shape how the list is written', () => {
    expect(more('photos:\n  - bench.jpg')[0]).toMatch(
      /^9:5 wrong-shape: photo 1 should be a map .* Write it like `photos: \[\{ file: bench\.jpg, alt: /,
    );
  });
});

describe('a quantity in a field', () => {
  it('needs a unit', () => {
    expect(more('nose: 310')).toEqual([
      '8:7 missing-unit: `nose`: "310" has no unit; write one of mm, cm, dm, m, in, ft or yd behind the number, such as "3.20 m".',
    ]);
    expect(more('balance: 104')).toEqual([
      '8:10 missing-unit: `balance`: "104" has no unit. Write a length, such as 104 mm, or a share of the mean aerodynamic chord, such as 38 %.',
    ]);
  });

  it('needs a unit that is known, and of its kind', () => {
    expect(more('nose: 3 km')).toEqual([
      '8:7 unknown-unit: `nose`: "3 km" has a unit that is not known, "km": a length is written in mm, cm, dm, m, in, ft or yd.',
    ]);
    expect(more('nose: 310 g').map((told) => told.slice(0, 34))).toEqual([
      '8:7 wrong-kind-of-unit: `nose`: "3',
    ]);
  });

  it('needs a number that can be read in one way', () => {
    expect(more('nose: 1,200 mm').map((told) => told.slice(0, 80))).toEqual([
      '8:7 ambiguous-number: `nose`: "1,200 mm" can be read in two ways; write "1.200 m',
    ]);
    expect(more('nose: long').map((told) => told.slice(0, 62))).toEqual([
      '8:7 not-a-quantity: `nose`: "long" cannot be read as a length;',
    ]);
  });

  it('needs a value that can be', () => {
    expect(allTold(entryOf(smallestEntry.replace('100 g', '-100 g')))).toEqual([
      '6:19 impossible-value: `mass.airframe`: "-100 g" is impossible: a mass cannot be negative here.',
    ]);
    expect(allTold(entryOf(smallestEntry.replace('count: 2', 'count: 0')))).toEqual([
      '7:19 impossible-value: `count` in motor 1: "0" is too few. Write a whole number of at least 1.',
    ]);
  });

  it('may be below zero for a drop, a sweep and the balance', () => {
    const panels =
      'wing: { span: 1.2 m, panels: [{ length: 0.6 m, root: 150 mm, tip: 120 mm, sweep: -10 mm }] }';
    const entry = `${smallestEntry.replace('wing: { span: 1.2 m }', panels)}
balance: -4 mm
flights: [{ number: 1, date: 2027-05-09, time: 12 s, drop: -1 m, balance: -2 % }]`;
    expect(allTold(entryOf(entry))).toEqual([]);
  });

  it('is a length with an uncertainty in per cent, not a share, where the per cent stands behind ±', () => {
    const { entry } = entryOf(`${smallestEntry}\nbalance: 100 mm ± 5 %`);
    expect(entry?.setups[0].design.balance).toMatchObject({ kind: 'length', value: 0.1 });
    expect(entry?.setups[0].design.balance?.u).toBeCloseTo(0.005, 12);
  });
});

describe('other values', () => {
  const flight = (field: string) =>
    more(`flights:\n  - { number: 1, date: 2027-05-09, time: 12 s, ${field} }`);

  it('are yes or no where that is asked', () => {
    expect(flight('withdrawn: maybe')).toEqual([
      '9:59 not-yes-or-no: `withdrawn` in flight 1: "maybe" is neither yes nor no. Write true or false.',
    ]);
  });

  it('are days of the calendar', () => {
    expect(more('entered: 2027-02-29')).toEqual([
      '8:10 not-a-date: `entered`: "2027-02-29" is not a day of the calendar. Write the day it was.',
    ]);
    expect(more('entered: 28.3.2027')).toEqual([
      '8:10 not-a-date: `entered`: "28.3.2027" is not a date as this format writes it. Write year, month and day with hyphens between them. Did you mean "2027-03-28"?\n-> 2027-03-28',
    ]);
    expect(allTold(batchOf('label: Fen A\nmade: spring'))).toEqual([
      '3:7 not-a-date: `made`: "spring" is not a month or a date. Write a month or a date, such as 2026-02 or 2026-02-14.',
    ]);
  });

  it('are names that can stand in an address', () => {
    expect(allTold(entryOf(smallestEntry.replace('amarsh', 'A Marsh')))).toEqual([
      '3:10 not-a-slug: `builder`: "A Marsh" has characters that have no place in an address, or too many. Write a name of a to z, digits and hyphens, at most 64 characters, such as amarsh or fen-a. Did you mean "a-marsh"?\n-> a-marsh',
    ]);
  });

  it('name another entry by its challenge and its name', () => {
    expect(more('also: reedling')).toEqual([
      '8:7 not-an-entry: `also`: "reedling" does not name an entry. Write the name of a challenge, a stroke and the name of an entry, such as fenside-2026/reedling.',
    ]);
  });

  it('are addresses of the web, and of no other kind', () => {
    expect(flight('evidence: [video.example/abc]')).toEqual([
      '9:59 not-a-link: item 1 of `evidence` in flight 1: "video.example/abc" is not an address of the web. Write an address that starts with https:// or http://, such as https://video.example/abc. Did you mean "https://video.example/abc"?\n-> https://video.example/abc',
    ]);
    for (const link of [
      '"javascript:alert(1)"',
      '"data:text/html,x"',
      '"https://a@video.example"',
      'ftp://video.example',
    ])
      expect(flight(`evidence: ${link}`).map((told) => told.slice(0, 15))).toEqual(['9:58 not-a-link']);
  });

  it('hold no character that cannot be seen', () => {
    expect(more('structure: { wing: "balsa\\u202Eand tissue" }')).toEqual([
      '8:20 forbidden-character: `structure.wing`: there is a character in it that has no place in a text (U+202E, a character that changes the direction of the text unseen). Write the text without it.',
    ]);
  });
});

describe('a field of the site', () => {
  const site = (lines: string) => allTold(understandSite(sourceOf(`format: 1\ntitle: Long Haul\n${lines}`)));

  it('is a mail address or a colour', () => {
    expect(site('send-to: entries at fenside')).toEqual([
      '4:10 not-a-mail-address: `send-to`: "entries at fenside" is not a mail address. Write a mail address, such as entries@fenside.example.',
    ]);
    expect(site('accent: 8a3b12')).toEqual([
      '4:9 not-a-colour: `accent`: "8a3b12" is not a colour as it is written here. Write a hash and six hexadecimal digits, in quotes because of the hash, such as "#8a3b12".\n-> "#8a3b12"',
    ]);
  });

  it('is an address without what follows a path, or a mail address without what precedes it', () => {
    expect(site('address: https://a.example/b/?c#d')).toEqual([
      '4:10 not-a-link: `address`: "https://a.example/b/?c#d" goes on behind the path with "?c#d". Write the address without it. Did you mean "https://a.example/b/"?\n-> https://a.example/b/',
    ]);
    expect(site('address: https://a.example/b')).toEqual([]);
    expect(site('send-to: mailto:a@b.example')).toEqual([
      '4:10 not-a-mail-address: `send-to`: "mailto:a@b.example" is not a mail address. Write a mail address, such as entries@fenside.example. Did you mean "a@b.example"?\n-> a@b.example',
    ]);
  });

  it('is told where its value is a remark', () => {
    expect(site('accent: #8a3b12')).toEqual([
      '4:1 empty-field: `accent`: nothing is written here: what follows a space and `#` is a remark, so put the value in quotes; leave it out where you have nothing to say. Write it like `accent: "#8a3b12"`.\n-> accent: "#8a3b12"',
    ]);
    expect(site('accent: # later')[0]).toContain('nothing is written here; leave it out');
  });

  it('says the format, and knows no other than 1', () => {
    expect(allTold(understandSite(sourceOf('format: 2\ntitle: Long Haul')))).toEqual([
      '2:9 unknown-word: `format`: "2" is not a content format that this version of the generator reads. Write 1, or take a version that reads it.',
    ]);
  });
});

describe('a field of a challenge or a ruling', () => {
  const rules = (lines: string) => allTold(challengeOf(`${smallestChallenge}\n${lines}`));

  it('is a time zone', () => {
    expect(rules('time-zone: here')).toEqual([
      '5:12 not-a-time-zone: `time-zone`: "here" is not the name of a time zone. Write an area and a place, such as Europe/London, or UTC.',
    ]);
  });

  it('says how many flights or timekeepers', () => {
    expect(rules('flying: { flights: at least 9 }')).toEqual([
      '5:20 not-an-allowance: `flying.flights`: "at least 9" is no number of flights. Write the most that are allowed, such as at most 9.',
    ]);
    expect(rules('flying: { timekeepers: two }')).toEqual([
      '5:24 not-a-number-of-timekeepers: `flying.timekeepers`: "two" does not say how many timekeepers. Write how many timekeepers a flight needs, such as 2, or 2 or video.',
    ]);
  });

  it('is a seal', () => {
    const ruling =
      'flights: [{ flight: 4, verdict: accepted, by: otter, date: 2027-06-02, seal: 1-0345b3da }]';
    expect(allTold(rulingOf(ruling))).toEqual([
      '2:78 not-a-seal: `seal` in flight 4: "1-0345b3da" is not a seal. Write 1- and 16 hexadecimal digits, as the command writes it, such as 1-0345b3da7446da48.',
    ]);
  });
});

describe('several mistakes', () => {
  it('are all told in one run, whatever is wrong with the flight before', () => {
    const told = more(`flights:
  - { number: 1, date: 2027-02-30, time: 12 }
  - { number: 1, date: 2027-05-09, time: 12 s, watches: [12 s] }
  - 17
  - { number: 3, date: 2027-05-10 }`);
    expect(told.map((line) => line.split(': ')[0]).sort()).toEqual(
      [
        '9:24 not-a-date',
        '9:42 missing-unit',
        '10:15 duplicate-flight',
        '10:36 time-and-watches',
        '11:5 wrong-shape',
        '12:7 time-missing',
      ].sort(),
    );
  });

  it('are not looked for in a list that is too long for anybody', () => {
    expect(more(`setups:\n${'  - { id: b, from: 2027-06-10 }\n'.repeat(4600)}`)).toEqual([
      '8:1 too-many-items: `setups` has 4600 items; at most 100 are accepted. Keep those that readers need.',
    ]);
    expect(more(`onboard: [${'release, '.repeat(101)}]`)).toEqual([
      '8:1 too-many-items: `onboard` has 101 items; at most 100 are accepted. Keep those that readers need.',
    ]);
  });

  it('are listed up to 500 in a file', () => {
    const told = more(`flights:\n${'  - 1\n'.repeat(501)}`);
    expect(told).toHaveLength(501);
    expect(told.at(-1)).toBe(
      '1:1 more-mistakes: The fields of this file have more than 500 mistakes; the first 500 are listed. Correct these, then check again.',
    );
    expect(more(`flights:\n${'  - 1\n'.repeat(500)}`)).toHaveLength(500);
  });
});
