import { describe, expect, it, test } from 'vitest';
import { batchBeginning } from '../../../src/entries/begin/batch.ts';
import { beginFile, type PlainMap } from '../../../src/entries/begin/begin-file.ts';
import { type Beginning, setNamed } from '../../../src/entries/begin/beginning.ts';
import { challengeBeginning, rulesThatHoldAnyway } from '../../../src/entries/begin/challenge.ts';
import { entryBeginning } from '../../../src/entries/begin/entry.ts';
import { fieldNamed } from '../../../src/entries/begin/field-named.ts';
import { flightBeginning } from '../../../src/entries/begin/flight.ts';
import { isMissing, problemsIn } from '../../../src/entries/begin/problems-in.ts';
import { setupBeginning } from '../../../src/entries/begin/setup.ts';
import { describeFields, describeShape } from '../../../src/entries/describe/describe-shape.ts';
import { renderMarkdown } from '../../../src/entries/markdown.ts';
import { figureDefinition } from '../../../src/figures/registry.ts';
import { challengeOf, smallestChallenge } from '../written.ts';

// What a file must hold is written out by hand from content format 1; what is wrong with it is told by the readers of the site.
const begun = (beginning: Beginning, given: PlainMap = {}): string =>
  beginFile(describeFields(beginning.schema), { ...beginning, given });
/** The file with every remark that hides a field taken for the field. */
const uncovered = (text: string): string => text.replace(/^( *(?:- )?)# (?=[a-z-]+: )/gm, '$1');
const wrong = (file: string, text: string) => problemsIn(file, text).map(({ message }) => message);

const files = {
  'entries/summer/moth/entry.md': entryBeginning,
  'challenges/summer.md': challengeBeginning,
  'rubber/tan.md': batchBeginning,
};

describe.each(Object.entries(files))('%s, begun with nothing given', (file, beginning) => {
  it('lacks what is needed, and nothing else is wrong with it', () => {
    const problems = problemsIn(file, begun(beginning));
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.filter((problem) => !isMissing(problem))).toEqual([]);
  });

  it('holds a remark for each field that is needed', () => {
    const needed = describeFields(beginning.schema).filter(({ required }) => required);
    for (const { key } of needed)
      expect(begun(beginning)).toMatch(new RegExp(`^# ${key}: .+ {3}# needed: .`, 'm'));
  });

  it('is read without a fault once its remarks are taken for fields', () => {
    expect(wrong(file, uncovered(begun(beginning)))).toEqual([]);
  });

  it('shows nothing of what it says below its fields', () => {
    expect(renderMarkdown(beginning.body)).toBe('');
  });
});

describe('an entry', () => {
  const given = {
    motors: [{ skein: { strands: '12' }, count: '1' }],
    mass: { airframe: '168 g' },
    wing: { chord: '150 mm', span: '1.8 m' },
    control: 'free',
    builder: 'pip',
    name: 'Moth: "light"',
  };

  it('has its fields in the order of the content format, with the offered ones between them', () => {
    const keys = [...begun(entryBeginning, given).matchAll(/^(?:# )?([a-z]+):/gm)].map(([, key]) => key);
    expect(keys.join(' ')).toBe(
      'name builder control onboard origin layout photos wing tailplane fin balance mass structure trim motors',
    );
  });

  it('quotes what YAML would read otherwise', () => {
    expect(begun(entryBeginning, given)).toContain('\nname: "Moth: \\"light\\""\n');
  });

  it('ends no map with a remark, so that what is written behind it later does not part the two', () => {
    const text = begun(entryBeginning, given);
    expect(text).toContain('\n  span: 1.8 m\n  # panels: ');
    expect(text).toContain('\n  chord: 150 mm\n# tailplane');
    expect(text).toMatch(
      /\n {2}- count: 1\n {4}# rotation: .*(\n {4}# .*)+\n {4}skein: { strands: 12 }\n---\n/,
    );
    expect(begun(entryBeginning, { ...given, motors: [{ count: '1' }] })).toMatch(
      /\n {2}- # rotation: .*(\n {4}# .*)+\n {4}count: 1\n---\n/,
    );
  });

  it('is read without a fault with all offered fields uncovered', () => {
    const known = uncovered(begun(entryBeginning, { ...given, motors: [{ count: '1' }] }));
    // An area by panels, and one by the chord, of another wing: the reader is right to doubt that.
    const faults = problemsIn('entries/summer/moth/entry.md', known).filter(
      ({ severity }) => severity === 'error',
    );
    expect(faults).toEqual([]);
  });
});

describe('a challenge', () => {
  it('states timing and scoring as they hold where nothing is said', () => {
    const plain = challengeOf(smallestChallenge).challenge;
    const text = begun(challengeBeginning, {
      title: 'Long Haul',
      opens: '2027-03-01',
      closes: '2027-10-31',
      ...rulesThatHoldAnyway,
    });
    const [, fields = ''] = text.split(/^---\n/m);
    const stated = challengeOf(fields.trimEnd()).challenge;
    expect(fields).toContain('resolution: 0.1 s');
    expect(stated).toEqual(plain);
    expect(stated).not.toBeNull();
  });
});

describe('what may be given and asked', () => {
  const all = { entryBeginning, flightBeginning, setupBeginning, challengeBeginning, batchBeginning };

  test.each(Object.entries(all))(
    '%s names fields that there are',
    (_, { schema, options, questions, groups, offered }) => {
      const asked = [...questions, ...groups.flatMap((group) => group.questions)];
      const named = [
        ...Object.values(options),
        ...offered,
        ...asked.flatMap(({ field, unless, when }) => [
          field,
          ...(unless ?? []),
          ...(when === undefined ? [] : [when]),
        ]),
      ];
      const unknown = named.filter((name) => !fieldNamed(describeShape(schema), name).ok);
      expect(unknown).toEqual([]);
    },
  );

  it('knows the figures that a group of questions tells', () => {
    const told = entryBeginning.groups.flatMap(({ tells }) => tells ?? []);
    expect(told.map(({ figure }) => figure)).toContain('flying-mass');
    expect(told.filter(({ figure }) => figureDefinition(figure)?.of !== 'model')).toEqual([]);
    const others = told.flatMap(({ unless }) => unless ?? []);
    expect(others.filter((name) => !fieldNamed(describeShape(entryBeginning.schema), name).ok)).toEqual([]);
  });

  it('is enough for an entry: every question that needs an answer, answered, leaves nothing missing', () => {
    const answers: Readonly<Record<string, string>> = {
      name: 'Moth',
      'builder.handle': 'pip',
      control: 'free',
      'wing.span': '1.8 m',
      'mass.flying': '190 g',
      'motors.count': '1',
    };
    const needed = entryBeginning.questions
      .filter(({ optional }) => optional !== true)
      .map(({ field }) => field);
    expect(needed).toEqual(Object.keys(answers));
    const file = 'entries/summer/moth/entry.md';
    const without = (left: string | null) =>
      begun(
        entryBeginning,
        needed.reduce<PlainMap>((fields, field) => {
          const next = setNamed(entryBeginning.schema, fields, field, answers[field] ?? '');
          return field === left || !next.ok ? fields : next.fields;
        }, {}),
      );
    expect(wrong(file, without(null))).toEqual([]);
    for (const field of needed) expect(problemsIn(file, without(field)).filter(isMissing)).toHaveLength(1);
  });
});
