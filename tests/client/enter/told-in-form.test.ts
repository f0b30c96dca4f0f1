import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checked } from '../../../src/client/enter/checked.ts';
import { type PlacedProblem, placedProblems } from '../../../src/client/enter/problems-view.ts';

const nowhere = { challenge: 'c', id: 'e' };
const placed = (text: string) => placedProblems(checked(text, nowhere));

const rest = 'name: A\nbuilder: b\ncontrol: free\nmass: { airframe: 1 g }\nmotors: [{ count: 1 }]\n';
const wing = 'wing: { span: 3 m, chord: 20 cm }\n';

function only(fields: string, code: string): PlacedProblem {
  const found = placed(`---\n${fields}---\n`).filter(({ problem }) => problem.code === code);
  expect(found.map(({ problem }) => problem.code)).toEqual([code]);
  return found[0] as PlacedProblem;
}

const placeOf = (fields: string, code: string) => only(fields, code).path.join('.');

describe('the place of a problem in the form', () => {
  it('is the box of the one value that stands for a list, or for a map', () => {
    const flight = 'flights:\n  - { number: 1, date: 2026-05-09, time: 4 s, timekeepers: Ote R }\n';
    expect(placeOf(`${rest}${wing}${flight}`, 'not-a-slug')).toBe('flights.0.timekeepers.0');
    expect(placeOf(`${rest.replace('builder: b', 'builder: Tansy W')}${wing}`, 'not-a-slug')).toBe(
      'builder.0.handle',
    );
  });

  it('is where one types what is missing', () => {
    const flight = 'flights:\n  - { number: 7, date: 2026-05-09 }\n';
    expect(placeOf(`${rest}${wing}${flight}`, 'time-missing')).toBe('flights.0.time');
    const missing = placed('---\n---\n').map(({ path }) => path.join('.'));
    expect(missing).toEqual([
      'name',
      'builder.0.handle',
      'control',
      'wing.span',
      'mass.airframe',
      'motors.0.count',
    ]);
  });
});

describe('a problem as the form tells it', () => {
  it('has no key of the file where it stands under its field, and the names of the form elsewhere', () => {
    const span = only(`${rest}wing: { span: 3.2, chord: 20 cm }\n`, 'missing-unit');
    expect(span.atField).toMatch(/^"3\.2" has no unit/);
    expect(span.alone).toMatch(/^Wing, span: "3\.2" has no unit/);
  });

  it('names the part of a list it is about', () => {
    const flights = 'flights:\n  - { number: 7, date: 2026-05-09, time: 41.7 }\n';
    expect(only(`${rest}${wing}${flights}`, 'missing-unit').alone).toMatch(/^Flight 7, time: "41\.7"/);
    const two = 'flights:\n  - { number: 7, date: 2026-05-09 }\n';
    expect(only(`${rest}${wing}${two}`, 'time-missing')).toMatchObject({
      title: 'Flight 7, time',
      atField: 'Fill in “Time” where one watch was read, or “Watches” where several were.',
    });
  });

  it('offers a value that its field takes', () => {
    const chord = only(`${rest}wing: { span: 3 m, chord: 20 cms }\n`, 'unknown-unit');
    expect(chord.offer).toEqual({ path: ['wing', 'chord'], value: '20 cm', text: '20 cm' });
    expect(chord.atField).not.toContain('Did you mean');
    expect(only(`${rest}wing: { spam: 3 m, chord: 20 cm }\n`, 'unknown-key').offer).toBe(null);
    const turns =
      'motors: [{ count: 1 }, { count: 1 }]\nflights:\n  - { number: 1, date: 2026-05-09, time: 4 s, turns: "840, 830" }\n';
    const offered = only(`${rest.replace('motors: [{ count: 1 }]\n', turns)}${wing}`, 'wrong-shape').offer;
    expect(offered).toEqual({
      path: ['flights', 0, 'turns'],
      value: ['840', '830'],
      text: '840, 830',
    });
  });
});

// One file for each code that there is, as far as a file can show it.
describe('every kind of problem', () => {
  const cases = resolve(import.meta.dirname, '../../cases/mistakes/content/entries');
  const all = globSync('*/*/entry.md', { cwd: cases })
    .sort()
    .flatMap((file) => placed(readFileSync(join(cases, file), 'utf8')));

  it('is seen by this test', () => {
    expect(new Set(all.map(({ problem }) => problem.code)).size).toBeGreaterThan(40);
  });

  it('is told without backticks and without the path of a key', () => {
    for (const { path, atField, alone, problem } of all) {
      if (path.length === 0) continue;
      const known = `${problem.code}: ${atField} | ${alone}`;
      expect(known).not.toContain('`');
      expect(atField, known).toMatch(/^[A-Z"“]/);
      expect(alone, known).toMatch(/^[A-Z"“]/);
    }
  });
});
