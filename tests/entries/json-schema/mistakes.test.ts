import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import { editorOf, faultsOf } from './editor.ts';

const entry = `name: Plover
builder: amarsh
control: free
wing: { span: 1.2 m }
mass: { airframe: 100 g }
motors: [{ count: 2 }]`;

const challenge = `title: Long Haul
opens: 2027-03-01
closes: 2027-10-31`;

const editors = {
  entry: editorOf('entry'),
  challenge: editorOf('challenge'),
  ruling: editorOf('ruling'),
  rubber: editorOf('rubber'),
  site: editorOf('site'),
  page: editorOf('page'),
  builder: editorOf('builder'),
  news: editorOf('news'),
  result: editorOf('result'),
};

/** Kind of file; what is wrong; the fields; the place an editor marks. Written by hand from the content format. */
const mistakes: readonly (readonly [keyof typeof editors, string, string, string])[] = [
  ['entry', 'a key that nobody knows', `${entry}\ncolour: red`, ''],
  ['entry', 'a key with a slip', entry.replace('control:', 'contol:'), ''],
  ['entry', 'a required field is missing', entry.replace('builder: amarsh\n', ''), ''],
  ['entry', 'no motor', entry.replace('[{ count: 2 }]', '[]'), '/motors'],
  ['entry', 'a length without a unit', entry.replace('1.2 m', '1.2'), '/wing/span'],
  ['entry', 'a length in grams', entry.replace('1.2 m', '1.2 g'), '/wing/span'],
  ['entry', 'a mass in quotes without a unit', entry.replace('100 g', '"100"'), '/mass/airframe'],
  ['entry', 'a word with a slip', entry.replace('free', 'fre'), '/control'],
  ['entry', 'a word with a capital', entry.replace('free', 'Free'), '/control'],
  ['entry', 'a list where a map is meant', entry.replace('{ span: 1.2 m }', '[1.2 m]'), '/wing'],
  ['entry', 'a map where a list is meant', entry.replace('[{ count: 2 }]', '{ count: 2 }'), '/motors'],
  ['entry', 'nothing behind a key', `${entry}\nfin:`, '/fin'],
  ['entry', 'half a motor', entry.replace('count: 2', 'count: 0.5'), '/motors/0/count'],
  ['entry', 'no motors of a kind', entry.replace('count: 2', 'count: 0'), '/motors/0/count'],
  ['entry', 'a number in words', entry.replace('count: 2', 'count: two'), '/motors/0/count'],
  ['entry', 'a handle with a space', entry.replace('amarsh', 'A. Marsh'), '/builder'],
  ['entry', 'a date with strokes', `${entry}\nentered: 28/03/2027`, '/entered'],
  ['entry', 'a month that does not exist', `${entry}\nentered: 2027-13-01`, '/entered'],
  ['entry', 'a flight without a date', `${entry}\nflights: [{ number: 1, time: 40 s }]`, '/flights/0'],
  [
    'entry',
    'a time without a unit',
    `${entry}\nflights: [{ number: 1, date: 2027-05-09, time: 41.7 }]`,
    '/flights/0/time',
  ],
  [
    'entry',
    'an hour that does not exist',
    `${entry}\nflights: [{ number: 1, date: 2027-05-09 25:00, time: 40 s }]`,
    '/flights/0/date',
  ],
  [
    'entry',
    'a humidity above one',
    `${entry}\nflights: [{ number: 1, date: 2027-05-09, weather: { humidity: 62 } }]`,
    '/flights/0/weather/humidity',
  ],
  [
    'entry',
    'evidence without https',
    `${entry}\nflights: [{ number: 1, date: 2027-05-09, evidence: [video.example/a] }]`,
    '/flights/0/evidence/0',
  ],
  ['entry', 'a setup without its day', `${entry}\nsetups: [{ id: b }]`, '/setups/0'],
  [
    'entry',
    'flights inside a setup',
    `${entry}\nsetups: [{ id: b, from: 2027-06-10, flights: [] }]`,
    '/setups/0',
  ],
  ['entry', 'another entry without its challenge', `${entry}\nalso: reedling`, '/also'],
  ['challenge', 'a challenge that never closes', challenge.replace('closes: 2027-10-31', ''), ''],
  [
    'challenge',
    'a limit without its words',
    `${challenge}\neligibility: { span: 2.4 m }`,
    '/eligibility/span',
  ],
  [
    'challenge',
    'a limit without a unit',
    `${challenge}\neligibility: { span: at least 2.4 }`,
    '/eligibility/span',
  ],
  [
    'challenge',
    'a limit on what is no figure',
    `${challenge}\neligibility: { wing-span: at least 2.4 m }`,
    '/eligibility',
  ],
  ['challenge', 'a division without a name', `${challenge}\ndivisions: [{ id: free }]`, '/divisions/0'],
  ['challenge', 'a method with a slip', `${challenge}\nscoring: { method: bset }`, '/scoring/method'],
  ['challenge', 'a tie-break by no figure', `${challenge}\ntie-break: [larger wings]`, '/tie-break/0'],
  [
    'challenge',
    'a handicap by no figure',
    `${challenge}\nscoring: { scale: { by: wings, reference: 2.4 m, power: 1 } }`,
    '/scoring/scale/by',
  ],
  [
    'challenge',
    'an allowance in words of its own',
    `${challenge}\nflying: { flights: up to 9 }`,
    '/flying/flights',
  ],
  ['challenge', 'a time zone of three letters', `${challenge}\ntime-zone: bst`, '/time-zone'],
  [
    'ruling',
    'a verdict that does not exist',
    'flights: [{ flight: 1, verdict: ok, by: otter, date: 2027-05-12 }]',
    '/flights/0/verdict',
  ],
  [
    'ruling',
    'a ruling by nobody',
    'flights: [{ flight: 1, verdict: accepted, date: 2027-05-12 }]',
    '/flights/0',
  ],
  [
    'ruling',
    'a seal cut short',
    'flights: [{ flight: 1, verdict: accepted, by: otter, date: 2027-05-12, seal: 1-0345 }]',
    '/flights/0/seal',
  ],
  ['rubber', 'a strip without its thickness', 'label: Fen A\nstrip: { width: 3.2 mm }', '/strip'],
  ['rubber', 'a density without a unit', 'label: Fen A\ndensity: 930', '/density'],
  ['site', 'no format', 'title: Long Haul', ''],
  ['site', 'a format of the future', 'format: 2\ntitle: Long Haul', '/format'],
  [
    'site',
    'an address that goes on behind the path',
    'format: 1\ntitle: Long Haul\naddress: https://fenside.example/?a=b',
    '/address',
  ],
  ['site', 'a colour by its name', 'format: 1\ntitle: Long Haul\naccent: brown', '/accent'],
  ['page', 'an order in words', 'title: How to measure\norder: first', '/order'],
  ['builder', 'neither yes nor no', 'junior: perhaps', '/junior'],
  ['news', 'news without a date', 'title: The season is open', ''],
  ['result', 'a result of nothing', '{}', ''],
];

test('the fields they are made from are right', () => {
  expect(faultsOf(editors.entry, parse(entry))).toEqual([]);
  expect(faultsOf(editors.challenge, parse(challenge))).toEqual([]);
});

describe('an editor marks', () => {
  test.each(mistakes)('%s: %s', (kind, _, fields, place) => {
    const validate = editors[kind];
    expect(validate(parse(fields) ?? {})).toBe(false);
    const places = (validate.errors ?? []).map(({ instancePath }) => instancePath);
    expect(
      places.some((marked) => marked === place || (place !== '' && marked.startsWith(`${place}/`))),
    ).toBe(true);
  });
});

describe('an editor lets through', () => {
  const flight = (fields: string) => `${entry}\nflights: [{ number: 1, date: 2027-05-09, ${fields} }]`;

  it.each([
    ['a name of digits', entry.replace('Plover', '14')],
    ['damage: no, which older readers take for false', flight('damage: no')],
    ['a count in quotes', entry.replace('count: 2', 'count: "2"')],
    ['a setup named by a number', flight('setup: 2')],
    ['yes for true', flight('withdrawn: Yes')],
    ['turns as a number, and as cranks of a winder', flight('turns: 640, wound-to: 54 x 10')],
    ['a share as a number', flight('weather: { humidity: 0.62 }')],
    ['a time with a colon', flight('time: 1:05.3')],
    ['feet and inches', entry.replace('1.2 m', `'10'' 6"'`)],
    ['one fraction sign', entry.replace('{ count: 2 }', '{ count: 2, hooks: ½ in }')],
    ['zero for the centre line', entry.replace('{ count: 2 }', '{ count: 1, at: 0 }')],
    ['a balance in per cent', `${entry}\nbalance: 38 %`],
    ['a share ahead of the chord', `${entry}\nbalance: -2 %`],
  ])('%s', (_, fields) => {
    expect(faultsOf(editors.entry, parse(fields))).toEqual([]);
  });
});
