import { describe, expect, it } from 'vitest';
import { ruleChanges } from '../../../src/contest/rules/rule-changes.ts';
import { challengeOf } from '../../entries/written.ts';

// What counts as a rule is the project's own decision; no source outside.

const rules = (...lines: string[]) => {
  const { challenge } = challengeOf(
    ['title: Long Haul', 'opens: 2027-03-01', 'closes: 2027-10-31', ...lines].join('\n'),
  );
  if (challenge === null) throw new Error('The rules of this test do not read.');
  return challenge;
};

describe('changes of the rules', () => {
  it('are named by their field, in words', () => {
    const after = rules(
      'flying: { maximum: 3:00, timekeepers: 2 or video }',
      'eligibility: { span: at most 2 m }',
    );
    expect(ruleChanges(rules(), after)).toEqual([
      { field: 'flying.maximum', before: 'none', after: '180 s' },
      { field: 'flying.timekeepers', before: '0', after: '2 or video' },
      { field: 'eligibility.span', before: 'none', after: 'at most 2 m' },
    ]);
  });

  it('tell what was taken away', () => {
    expect(ruleChanges(rules('protests: 14 days'), rules())).toEqual([
      { field: 'protests', before: '14 days', after: 'none' },
    ]);
  });

  it('leave out what is no rule: title, names and amendments', () => {
    const before = rules('target: { time: 60 s, label: A minute }');
    const after = {
      ...rules('target: { time: 60 s, label: The minute }'),
      title: 'The Long Haul',
      body: 'Other words.',
      amendments: [{ date: '2027-05-01', what: 'A word.', why: null }],
    };
    expect(ruleChanges(before, after)).toEqual([]);
  });

  it('do not see a default that is written out, nor another order of a list', () => {
    const before = rules('eligibility: { control: [free, guided] }');
    const after = rules('eligibility: { control: [guided, free] }', 'scoring: { method: best }');
    expect(ruleChanges(before, after)).toEqual([]);
  });
});
