import { describe, expect, it } from 'vitest';
import { checked } from '../../../src/client/enter/checked.ts';
import { pathOfProblem } from '../../../src/client/enter/path-of-problem.ts';

/** The code of every problem of these fields with the field it is told at. */
function told(fields: string): (readonly [string, string])[] {
  const { source, problems } = checked(`---\n${fields}---\n`, { challenge: 'c', id: 'e' });
  if (source === null) throw new Error('cannot be read');
  return problems.map((problem) => [problem.code, pathOfProblem(source, problem).join('.')]);
}

const rest = 'name: A\nbuilder: b\ncontrol: free\nmass: { airframe: 1 g }\nmotors: [{ count: 1 }]\n';

describe('the field of a problem', () => {
  it('is the one that holds the value it is about', () => {
    expect(told(`${rest}wing: { span: 3, chord: 20 cm }\n`)).toContainEqual(['missing-unit', 'wing.span']);
    expect(
      told(`${rest}wing: { span: 3 m }\nflights:\n  - number: 1\n    date: x\n    time: 4 s\n`),
    ).toContainEqual(['not-a-date', 'flights.0.date']);
  });

  it('is the item of a list', () => {
    expect(
      told(`${rest}wing: { span: 3 m }\nflights:\n  - { number: 1, date: 2026-05-09, watches: [4 s, 4] }\n`),
    ).toContainEqual(['missing-unit', 'flights.0.watches.1']);
  });

  it('is the place that a missing one would have', () => {
    expect(told('name: A\n')).toEqual(
      expect.arrayContaining([
        ['missing-field', 'builder'],
        ['missing-field', 'wing'],
        ['missing-field', 'motors'],
      ]),
    );
    expect(told(`${rest}wing: { chord: 20 cm }\n`)).toContainEqual(['missing-field', 'wing.span']);
    expect(told(`${rest}wing: { span: 3 m }\nflights:\n  - number: 1\n    time: 4 s\n`)).toContainEqual([
      'missing-field',
      'flights.0.date',
    ]);
  });

  it('is the key where the value is empty', () => {
    expect(told(`${rest}wing:\n  span:\n`)).toContainEqual(['empty-field', 'wing.span']);
  });
});
