import { expect, test } from 'vitest';
import { describeFields, describeShape } from '../../../src/entries/describe/describe-shape.ts';
import type { Shape } from '../../../src/entries/describe/field.ts';
import { challenge } from '../../../src/entries/schema/challenge.ts';
import { challengeOf, smallestChallenge } from '../written.ts';

// What a field says is taken where nothing is said must be what is taken.

/** `word where nothing is said`, from the description of each field that says so, by its path. */
function told(shape: Shape, path = ''): [string, string][] {
  if (shape.kind !== 'map') return [];
  return shape.fields.flatMap(({ key, description, shape: inner }) => {
    const here = path === '' ? key : `${path}.${key}`;
    const taken = /; (?:at the |by their )?([^;]+) where nothing is said$/.exec(description)?.[1];
    return [...(taken === undefined ? [] : [[here, taken] as [string, string]]), ...told(inner, here)];
  });
}

test('of the rules of a challenge', () => {
  const { challenge: rules } = challengeOf(smallestChallenge);
  expect(describeFields(challenge).length).toBeGreaterThan(10);
  expect(Object.fromEntries(told(describeShape(challenge)))).toEqual({
    'timing.starts': rules?.timing.starts,
    'timing.combine': rules?.timing.combine,
    'timing.resolution': `${rules?.timing.resolution} s`,
    'timing.round': rules?.timing.round,
    'timing.uncertainty.watch': `${rules?.timing.uncertainty.watch.toFixed(2)} s`,
    'timing.uncertainty.video': `${rules?.timing.uncertainty.video.toFixed(2)} s`,
    'scoring.method': rules?.scoring.method,
    'scoring.flights': '3',
    'scoring.provisional': rules?.scoring.provisional,
  });
  expect(challengeOf(`${smallestChallenge}\nscoring: { method: sum }`).challenge?.scoring.flights).toBe(3);
});
