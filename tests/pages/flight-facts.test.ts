import { describe, expect, it } from 'vitest';
import { flightFacts } from '../../src/components/flight-facts.ts';
import { entryRecord, flight, quantity } from './almanac-fixture.ts';

type System = 'metric' | 'imperial';

function factsOf(
  changes: Partial<ReturnType<typeof flight>>,
  system: System = 'metric',
): ReadonlyMap<string, string> {
  const [record] = entryRecord('heron', 44).flights;
  if (record === undefined) throw new Error('The entry has no flight.');
  const lines = flightFacts(
    { ...record, flight: { ...flight(1, 44), ...changes } },
    { setup: false, watches: true },
  );
  return new Map(lines.map(({ label, text }) => [label, text[system].replaceAll('\u00a0', ' ')]));
}

describe('facts of a flight', () => {
  // 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959).
  it('stand as they were written, and converted in the other system', () => {
    const height = quantity('length', 18.288, 0.007, '60 ft');
    expect(factsOf({ height }, 'imperial').get('Highest seen')).toBe('60 ft');
    expect(factsOf({ height }, 'metric').get('Highest seen')).toBe('18.3 m');
  });

  it('keep every digit of a watch', () => {
    const watches = [quantity('time', 95.6, 0.1, '1:35.60'), quantity('time', 95.6, 0.1, '95.60 s')];
    expect(factsOf({ watches }).get('Watches')).toBe('1:35.60, 95.60 s');
  });
});
