import { describe, expect, it } from 'vitest';
import { publishedChecks } from './published-checks.ts';

// Laws (the optimum of rubber and airframe, the scaling of skeins, the polar's identities), bounds (the actuator disc, the
// sporting classes) and whole contests are tested beside what they are about; numbers of a single case stand here.
describe('published numbers', () => {
  it.each(publishedChecks.map((check) => [check.what, check.source, check.from, check] as const))(
    '%s (%s, %s)',
    (_, __, ___, { expected, tolerance, ours }) => {
      expect(Math.abs(ours() - expected)).toBeLessThanOrEqual(tolerance);
    },
  );
});
