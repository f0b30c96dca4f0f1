import { describe, expect, it } from 'vitest';
import { entryOf, smallestEntry } from '../written.ts';

// Expected meanings are those of content format 1; conversions use the international yard and pound (1959): the inch is
// 25.4 mm, the ounce 28.349523125 g.

const meaning = (frontMatter: string) => {
  const { entry, problems } = entryOf(frontMatter);
  if (entry === null) throw new Error(problems.map(({ message }) => message).join(' '));
  return entry;
};

const more = (lines: string) => meaning(`${smallestEntry}\n${lines}`);

describe('an entry', () => {
  it('keeps what it does not say as absent', () => {
    const entry = meaning(smallestEntry);
    expect(entry).toMatchObject({
      challenge: 'long-haul-2027',
      id: 'plover',
      name: 'Plover',
      builders: [{ handle: 'amarsh', name: null, club: null, junior: false }],
      entered: null,
      photos: [],
      glides: [],
      flights: [],
      withdrawn: null,
      also: [],
      formerly: [],
      body: 'Body.\n',
    });
    expect(entry.setups).toHaveLength(1);
    expect(entry.setups[0]).toMatchObject({ id: null, from: null, change: null, overrides: [] });
    expect(entry.setups[0].design).toMatchObject({
      control: 'free',
      onboard: [],
      origin: null,
      layout: 'tail-aft',
      tailplane: null,
      fin: null,
      balance: null,
      mass: { flying: null, parts: {} },
      structure: {},
      inspected: null,
    });
  });

  it('is in SI', () => {
    const { design } = meaning(
      smallestEntry.replace('1.2 m', '8 ft 2 in').replace('airframe: 100 g', 'flying: 1 lb 7 oz'),
    ).setups[0];
    expect(design.wing.span.value).toBeCloseTo(98 * 0.0254, 12);
    expect(design.mass.flying?.value).toBeCloseTo(23 * 0.028349523125, 12);
    expect(design.mass.airframe).toBeNull();
  });

  it('takes one builder or a team', () => {
    const team = meaning(
      smallestEntry.replace('amarsh', '[cmere, { handle: bwren, name: B. Wren, junior: yes }]'),
    );
    expect(team.builders).toEqual([
      { handle: 'cmere', name: null, club: null, junior: false },
      { handle: 'bwren', name: 'B. Wren', club: null, junior: true },
    ]);
  });

  it('takes a pitch or a blade angle, a log by name or with its turns, 0 as the centre line', () => {
    const motor = (fields: string) =>
      meaning(smallestEntry.replace('count: 2', `count: 2, ${fields}`)).setups[0].design.motors[0];
    expect(motor('propeller: { pitch: 400 mm }')?.propeller?.pitch).toMatchObject({
      kind: 'length',
      value: 0.4,
    });
    expect(motor('propeller: { pitch: { angle: 30°, at: 110 mm } }')?.propeller?.pitch).toMatchObject({
      angle: { kind: 'angle', value: Math.PI / 6 },
      at: { value: 0.11 },
    });
    expect(motor('thrust-log: a.csv')?.thrustLog).toEqual({ file: 'a.csv', turns: null });
    expect(motor('thrust-log: { file: a.csv, turns: 54 x 10 }')?.thrustLog).toMatchObject({
      file: 'a.csv',
      turns: { value: 540 },
    });
    expect(motor('at: 0')?.at).toMatchObject([{ value: 0, u: 0, written: '0' }]);
    expect(motor('break-turns: 800')?.breakTurns).toMatchObject([{ value: 800 }]);
  });
});

describe('setups', () => {
  const entry = `name: Plover
builder: amarsh
control: free
onboard: [release, dethermaliser]
wing: { span: 1.2 m, area: 18 dm2, incidence: 3° }
tailplane: { span: 40 cm, arm: 60 cm }
mass: { airframe: 100 g, parts: { wing: 40 g, tail: 8 g } }
structure: { wing: balsa, finish: dope }
motors: [{ count: 2, hooks: 300 mm }]
photos: [{ file: a.jpg, alt: The first wing }]
`;

  it('merge maps key by key, and replace lists and single values', () => {
    const [first, b] = meaning(`${entry}setups:
  - id: b
    from: 2027-06-10
    change: new tail
    onboard: [locator]
    tailplane: { span: 42 cm }
    structure: { finish: varnish }
    mass: { parts: { tail: 9 g } }
    motors: [{ count: 1 }]`).setups;
    expect(b).toMatchObject({ id: 'b', from: '2027-06-10', change: 'new tail' });
    expect(b?.design.onboard).toEqual(['locator']);
    expect(b?.design.tailplane).toMatchObject({ span: { value: 0.42 }, arm: { value: 0.6 } });
    expect(b?.design.structure).toEqual({ wing: 'balsa', finish: 'varnish' });
    expect(b?.design.mass.parts).toMatchObject({ wing: { value: 0.04 }, tail: { value: 0.009 } });
    expect(b?.design.mass.airframe).toBe(first.design.mass.airframe);
    expect(b?.design.motors).toMatchObject([{ count: 1, hooks: null }]);
    expect(b?.overrides).toEqual([
      'onboard',
      'tailplane.span',
      'structure.finish',
      'mass.parts.tail',
      'motors',
    ]);
  });

  it('start from the one in force before them, whatever their order in the file', () => {
    const { setups } = meaning(`${entry}setups:
  - { id: c, from: 2027-07-01, nose: 20 cm }
  - { id: b, from: 2027-06-10, wing: { span: 1.3 m } }`);
    expect(setups.map(({ id }) => id)).toEqual([null, 'b', 'c']);
    expect(setups[1]?.design.nose).toBeNull();
    expect(setups[2]?.design.wing.span.value).toBe(1.3);
    expect(setups[2]?.design.nose?.value).toBe(0.2);
  });

  it('drop the rivals of a wing area and of a mass, and nothing else', () => {
    const [, b] = meaning(`${entry}setups:
  - { id: b, from: 2027-06-10, wing: { chord: 160 mm }, mass: { flying: 130 g } }`).setups;
    expect(b?.design.wing).toMatchObject({
      area: null,
      panels: null,
      chord: { value: 0.16 },
      span: { value: 1.2 },
    });
    expect(b?.design.wing.incidence).not.toBeNull();
    expect(b?.design.mass).toMatchObject({ airframe: null, flying: { value: 0.13 } });
    expect(Object.keys(b?.design.mass.parts ?? {})).toEqual(['wing', 'tail']);
  });

  it('keep the base input of what they do not change: the same object, so its error is shared', () => {
    const [first, b] = meaning(`${entry}setups: [{ id: b, from: 2027-06-10, nose: 20 cm }]`).setups;
    expect(b?.design.wing.span).toBe(first.design.wing.span);
  });

  it('add their photos to those of the entry', () => {
    const { photos } = meaning(
      `${entry}setups: [{ id: b, from: 2027-06-10, photos: [{ file: b.jpg, alt: The second wing }] }]`,
    );
    expect(photos.map(({ file }) => file)).toEqual(['a.jpg', 'b.jpg']);
  });
});

describe('flights', () => {
  it('stand in number order, with their times as watches', () => {
    const { flights } = more(`flights:
  - { number: 7, date: 2027-05-10, watches: [41.62 s, 41.80 s], timed-by: video }
  - { number: 2, date: 2027-05-09 18:40+01:00, time: 1:02.4 }`);
    expect(flights.map(({ number }) => number)).toEqual([2, 7]);
    expect(flights[0]?.watches.map(({ value }) => value)).toEqual([62.4]);
    expect(flights[0]?.date).toMatchObject({ date: '2027-05-09', time: '18:40', offset: 60 });
    expect(flights[0]?.timedBy).toBe('watch');
    expect(flights[1]?.watches.map(({ value }) => value)).toEqual([41.62, 41.8]);
  });

  it('tell the setup none from a setup not stated', () => {
    const { flights } = more(`setups: [{ id: b, from: 2027-01-01 }]
flights:
  - { number: 1, date: 2027-05-09, time: 12 s }
  - { number: 2, date: 2027-05-09, time: 12 s, setup: none }
  - { number: 3, date: 2027-05-09, time: 12 s, setup: b }`);
    expect(flights.map(({ setup }) => setup)).toEqual([undefined, null, 'b']);
  });

  it('take one number of turns for all motors, or a list', () => {
    const { flights } = more(
      'flights: [{ number: 1, date: 2027-05-09, time: 12 s, turns: 54 x 10, launch-torque: [61 mN·m] }]',
    );
    expect(flights[0]?.turns.map(({ value }) => value)).toEqual([540]);
    expect(flights[0]?.launchTorque[0]?.value).toBeCloseTo(0.061, 12);
  });
});
