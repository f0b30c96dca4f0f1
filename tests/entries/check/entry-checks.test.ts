import { describe, expect, it } from 'vitest';
import { understandBuilder } from '../../../src/entries/understand/builder.ts';
import { allTold, batchOf, entryOf, smallestEntry, sourceOf } from '../written.ts';

// What is checked is content format 1; the wording is this project's own. Places were counted by hand: the first line
// of front matter is line 2, the smallest entry fills lines 2 to 7.

const more = (lines: string) => allTold(entryOf(`${smallestEntry}\n${lines}`));
const changed = (from: string, to: string) => allTold(entryOf(smallestEntry.replace(from, to)));

describe('one mistake', () => {
  const codes = (lines: readonly string[]) => lines.map((line) => line.split(': ')[0]);

  it('in the key of a mass or a time is no missing mass or time too', () => {
    expect(codes(changed('airframe', 'airfame'))).toEqual(['6:9 unknown-key']);
    expect(codes(more('flights:\n  - { number: 1, date: 2027-05-09, times: 12 s }'))).toEqual([
      '9:36 unknown-key',
    ]);
    expect(codes(more('flights:\n  - { number: 1, date: 2027-05-09, watch: 12 s }'))).toEqual([
      '9:36 unknown-key',
    ]);
  });

  it('in a skein is no skein of which too little is given', () => {
    const skein = (fields: string) => codes(changed('{ count: 2 }', `{ count: 2, skein: { ${fields} } }`));
    expect(skein('length: 300 mm, mass: 4')).toEqual(['7:53 missing-unit']);
    expect(skein('length: 300 mm, mas: 4 g')).toEqual(['7:47 unknown-key']);
    expect(skein('length: 300 mm')).toEqual(['7:22 skein-incomplete']);
  });

  it('in the panels is no span of nothing', () => {
    expect(codes(changed('span: 1.2 m', 'span: 1.2 m, panels: []'))).toEqual(['5:30 empty-field']);
    const map = 'panels: { length: 900 mm, root: 300 mm, tip: 300 mm }';
    expect(codes(changed('span: 1.2 m', `span: 1.2 m, ${map}`))).toEqual(['5:30 wrong-shape']);
    const upright = 'panels: [{ length: 600 mm, root: 300 mm, tip: 300 mm, dihedral: 95° }]';
    expect(codes(changed('span: 1.2 m', `span: 1.2 m, ${upright}`))).toEqual(['5:86 improbable-value']);
  });
});

describe('the entry by itself', () => {
  it('the smallest one has no problem', () => {
    expect(allTold(entryOf(smallestEntry))).toEqual([]);
  });

  it('names each builder once', () => {
    expect(changed('amarsh', '[amarsh, { handle: amarsh }]')).toEqual([
      '3:29 duplicate-builder: `builder` names "amarsh" twice; name each builder once.\n(3:11 "amarsh" is named here first)',
    ]);
  });

  it('has nothing but the handle of a junior', () => {
    const kept = (field: string) =>
      `${field} is given for a junior. No page shows it, but whoever gets the file reads it, and its history keeps it for good. Take it out: the handle is enough.`;
    const junior = '{ handle: newt, name: N. Ewt, club: Fenside Flyers, junior: true }';
    expect(changed('amarsh', junior)).toEqual([
      `3:26 junior-named: ${kept('`builder.name`')}`,
      `3:40 junior-named: ${kept('`builder.club`')}`,
    ]);
    expect(changed('amarsh', `[amarsh, ${junior}]`)[0]).toContain(
      'junior-named: `name` in item 2 of `builder`',
    );
    expect(changed('amarsh', '{ handle: newt, junior: true }')).toEqual([]);
    expect(changed('amarsh', junior.replace('true', 'false'))).toEqual([]);
    const file = (fields: string) => allTold(understandBuilder(sourceOf(fields), { handle: 'newt' }));
    expect(file('junior: true\nlink: https://club.example/newt')).toEqual([
      `3:1 junior-named: ${kept('`link`')}`,
    ]);
    expect(file('junior: true')).toEqual([]);
  });

  it('gives the mass of the whole model', () => {
    expect(changed('{ airframe: 100 g }', '{ parts: { wing: 20 g } }')).toEqual([
      '6:1 mass-missing: `mass` needs the mass of the whole model. Write `airframe`, ready to fly but without rubber, such as `airframe: 612 g`, or `flying`, with its rubber, such as `flying: 643 g`.\n-> airframe: 612 g',
    ]);
  });

  it('is guided where a stabiliser is on board', () => {
    expect(more('onboard: [release, stabiliser]')).toEqual([
      '4:10 stabiliser-is-guided: `control` is "free", but a stabiliser is on board: a sensor that moves a surface makes the model guided. Write "guided", or take the stabiliser out of `onboard`.\n-> guided\n(8:20 the stabiliser stands here)',
    ]);
  });

  it('is guided where a setup takes a stabiliser on board', () => {
    const setups = 'setups:\n  - { id: b, from: 2027-06-10, onboard: [stabiliser] }';
    expect(more(setups).map((told) => told.split(':').slice(0, 2).join(':'))).toEqual([
      '4:10 stabiliser-is-guided',
    ]);
    expect(more(setups.replace('onboard', 'control: guided, onboard'))).toEqual([]);
  });
});

describe('the wing', () => {
  // 2 × 500 mm without dihedral: span 1 m; chords 200 and 150 mm: area 2 × 0.5 m × 0.175 m = 17.5 dm².
  const panels = 'panels: [{ length: 500 mm, root: 200 mm, tip: 150 mm }]';

  it('has the span of its panels', () => {
    expect(changed('span: 1.2 m', `span: 1.2 m, ${panels}`)).toEqual([
      '5:15 span-differs: `wing.span` is "1.2 m", but the panels have a span of 1 m: 16.7 % apart. Measure again and correct the wrong one.',
    ]);
  });

  it('has the area of its panels', () => {
    expect(changed('span: 1.2 m', `span: 1 m, area: 20 dm2, ${panels}`)).toEqual([
      '5:26 area-differs: `wing.area` is "20 dm2", but the panels have an area of 17.5 dm2: 12.5 % apart. Measure again and correct the wrong one.',
    ]);
  });

  it('has the mean chord of its area and span', () => {
    expect(changed('span: 1.2 m', 'span: 1.2 m, area: 18 dm2, chord: 160 mm')).toEqual([
      '5:43 chord-differs: `wing.chord` is "160 mm", but `area` divided by `span` is 150 mm: 6.3 % apart. Measure again and correct the wrong one.',
    ]);
  });

  it('may differ by 2 % before anyone asks', () => {
    expect(changed('span: 1.2 m', `span: 1.019 m, area: 17.2 dm2, ${panels}`)).toEqual([]);
  });

  it('measures panels along themselves: dihedral makes the span shorter', () => {
    // cos 60° = 1/2
    expect(
      changed(
        'span: 1.2 m',
        'span: 0.5 m, panels: [{ length: 0.5 m, root: 0.2 m, tip: 0.2 m, dihedral: 60° }]',
      ),
    ).toEqual([]);
  });

  it('is asked about once, not once for each setup', () => {
    const entry = smallestEntry.replace('span: 1.2 m', 'span: 1.2 m, area: 18 dm2, chord: 160 mm');
    const setups =
      'setups:\n  - { id: b, from: 2027-06-10, nose: 20 cm }\n  - { id: c, from: 2027-07-10, wing: { span: 1.1 m } }';
    expect(allTold(entryOf(`${entry}\n${setups}`))).toHaveLength(2);
  });
});

describe('skeins', () => {
  it('need two of strip with strands, length and mass', () => {
    expect(changed('count: 2', 'count: 2, skein: { mass: 3 g, strands: 4 }')).toEqual([
      '7:22 skein-incomplete: `skein` in motor 1: too little is given to reckon with it. Write two of these: `strip` with `strands`, `length`, `mass`.',
    ]);
    expect(changed('count: 2', 'count: 2, skein: { mass: 3 g, batch: fen-a, strands: 4 }')).toEqual([]);
    expect(changed('count: 2', 'count: 2, skein: { mass: 3 g, length: 300 mm }')).toEqual([]);
  });
});

describe('setups', () => {
  it('have ids of their own', () => {
    expect(more('setups:\n  - { id: b, from: 2027-06-10 }\n  - { id: b, from: 2027-06-11 }')).toEqual([
      '10:11 duplicate-id: `id`: two setups are called "b". Write an id that no other setup has.\n(9:11 "b" stands here first)',
    ]);
  });

  it('hold from different days on', () => {
    expect(more('setups:\n  - { id: b, from: 2027-06-10 }\n  - { id: c, from: 2027-06-10 }')).toEqual([
      '10:20 setups-same-day: `from`: two setups hold from 2027-06-10 on, so that none of them is the later one. Write another day, or make one setup of the two.\n(9:20 the other one holds from here)',
    ]);
  });

  it('are not called none', () => {
    expect(more('setups:\n  - { id: none, from: 2027-06-10 }')).toEqual([
      '9:11 setup-named-none: `id`: a setup can\'t be called "none": flights use that word for the entry as first written. Write another id, such as "b".\n-> b',
    ]);
  });
});

describe('flights', () => {
  it('have numbers of their own', () => {
    expect(
      more(`flights:
  - { number: 1, date: 2027-05-09, time: 12 s }
  - { number: 4, date: 2027-05-09, time: 12 s }
  - { number: 1, date: 2027-05-10, time: 13 s }`),
    ).toEqual([
      '11:15 duplicate-flight: `number`: two flights have the number 1. A number is given once and never again; 5 is free.\n-> 5\n(9:15 flight 1 stands here first)',
    ]);
  });

  it('have one time, or watches', () => {
    expect(more('flights:\n  - { number: 2, date: 2027-05-09, time: 12 s, watches: [12.1 s] }')).toEqual([
      '9:36 time-and-watches: `time` in flight 2 stands beside `watches`, and only one of them can hold. Keep `watches` where several were read, `time` where there was one.\n(9:57 the watches stand here)',
    ]);
    expect(more('flights:\n  - { number: 2, date: 2027-05-09 }')).toEqual([
      '9:7 time-missing: flight 2 has no time. Write `time: 41.7 s`, or `watches: [41.62 s, 41.80 s]` where several were read.\n-> time: 41.7 s',
    ]);
  });

  it('name a setup of their entry', () => {
    expect(
      more(`setups:
  - { id: sealed, from: 2027-06-10 }
flights:
  - { number: 1, date: 2027-05-09, time: 12 s, setup: seeled }`),
    ).toEqual([
      '11:55 unknown-setup: `setup` in flight 1: the entry has no setup "seeled". Write none or sealed, or leave it out: then the date decides. Did you mean "sealed"?\n-> sealed',
    ]);
  });

  const flight = (field: string) =>
    more(`flights:\n  - { number: 1, date: 2027-05-09, time: 12 s, ${field} }`);

  it('list one value for each item of motors', () => {
    expect(flight('turns: [500, 510]')).toEqual([
      '9:55 one-for-each-motor: `turns` in flight 1 lists 2 values, but `motors` has 1 item. Write one value that holds for all motors, or one for each item of `motors`.',
    ]);
    expect(flight('turns: 500')).toEqual([]);
  });

  it('list them for the motors of the setup they were flown in', () => {
    const setups = 'setups:\n  - { id: b, from: 2027-06-10, motors: [{ count: 1 }, { count: 1 }] }\n';
    const flights = (day: string) =>
      `${setups}flights:\n  - { number: 1, date: ${day}, time: 12 s, turns: [500, 510] }`;
    expect(more(flights('2027-06-09'))).toHaveLength(1);
    expect(more(flights('2027-06-10'))).toEqual([]);
  });

  it('run no more motors than there are', () => {
    expect(flight('motors-run: 3')).toEqual([
      '9:60 more-motors-than-fitted: `motors-run` in flight 1 is "3", but the model has 2 motors. Write how many ran, or correct the `count` of `motors`.',
    ]);
  });

  it('begin with no more turns than were wound, and end with no more than they began with', () => {
    expect(flight('turns: 54 x 10, wound-to: 520')).toEqual([
      '9:74 turns-disagree: `wound-to` in flight 1 is "520", but `turns` is "54 x 10": backing off can only take turns out. Correct the wrong one.\n(9:55 the turns at launch stand here)',
    ]);
    expect(flight('turns: 500, turns-left: 600')).toEqual([
      '9:72 turns-disagree: `turns-left` in flight 1 is "600", but `turns` is "500": no more can be left than there were at launch. Correct the wrong one.\n(9:55 the turns at launch stand here)',
    ]);
  });
});

describe('an improbable value', () => {
  it('is asked about in the weather, in a balance, in a batch of rubber', () => {
    const codes = (lines: readonly string[]) => lines.map((line) => line.split(': ')[0]);
    const flight = 'flights: [{ number: 1, date: 2027-05-09, time: 9 s, weather: { humidity: 162 % } }]';
    expect(codes(more(flight))).toEqual(['8:74 improbable-value']);
    expect(more('balance: 30 m')[0]).toContain('Did you mean "30 cm"?');
    expect(more('balance: 138 %')).toEqual([]);
    const batch = 'label: Fen A\nstrip: { width: 32 mm, thickness: 1 mm }\ndensity: 93 g/cm3';
    expect(codes(allTold(batchOf(batch)))).toEqual(['3:17 improbable-value', '4:10 improbable-value']);
    expect(batchOf(batch).batch).not.toBeNull();
  });

  it('is asked about, with the likely unit', () => {
    expect(changed('1.2 m', '320 m')).toEqual([
      '5:15 improbable-value: `wing.span` is "320 m", which is improbable: models on rubber span from 15 cm to 15 m. Did you mean "320 cm"?\n-> 320 cm',
    ]);
  });

  it('is asked about without a guess where no unit makes it likely', () => {
    expect(more('flights: [{ number: 1, date: 2027-05-09, time: 0 s }]')).toEqual([
      '8:48 improbable-value: `time` in flight 1 is "0 s", which is improbable: flights on rubber last from about a second to an hour. Correct it if it is a slip.',
    ]);
  });

  it('is asked about in a setup too', () => {
    expect(more('setups: [{ id: b, from: 2027-06-10, mass: { airframe: 612 kg } }]')).toEqual([
      '8:55 improbable-value: `mass.airframe` in setup b is "612 kg", which is improbable: models on rubber weigh from half a gram to 10 kg. Did you mean "612 g"?\n-> 612 g',
    ]);
  });

  it('never keeps an entry out', () => {
    expect(entryOf(smallestEntry.replace('1.2 m', '320 m')).entry).not.toBeNull();
  });
});
