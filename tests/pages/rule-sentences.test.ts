import { describe, expect, it } from 'vitest';
import { ruleSections } from '../../src/components/rule-sentences.ts';
import { challenge } from './almanac-fixture.ts';

function sentencesOf(id: string, changes: Partial<typeof challenge> = {}): readonly string[] {
  return ruleSections({ ...challenge, ...changes }).find((section) => section.id === id)?.sentences ?? [];
}

const space = '\u00a0';

describe('rules in sentences', () => {
  it('say dates, target and limits as the organiser set them', () => {
    expect(sentencesOf('dates')).toEqual([
      'Flights from 1 April 2031 to 30 September 2031 count, both days included, by the calendar date at the flying place.',
      'A flight must be handed in by 14 October 2031.',
    ]);
    expect(sentencesOf('target')).toEqual([
      `An official time of 30${space}s or more reaches the target “Half a minute”, with no tolerance.`,
    ]);
    expect(sentencesOf('eligibility').slice(0, 2)).toEqual(['Span: at least 1 m.', 'Control: free flight.']);
  });

  it('say one flight and several in good English', () => {
    const perDay = (flightsPerDay: number) =>
      sentencesOf('flying', { flying: { ...challenge.flying, flightsPerDay } }).at(-1);
    expect(perDay(1)).toMatch(/^At most 1 flight on one day\./);
    expect(perDay(9)).toMatch(/^At most 9 flights on one day\./);
  });

  it('keep the order of the tie-breaks and name what is compared', () => {
    expect(sentencesOf('tie-breaks')).toEqual([
      'The larger span, beyond what measuring can tell apart.',
      'The score that was complete on the earlier day.',
    ]);
  });

  it('count the days of protests', () => {
    expect(sentencesOf('protests')[0]).toContain('for 14 days after it is published');
    expect(sentencesOf('protests', { protests: null })).toEqual([
      'No time for protests is set. Write to the organiser.',
    ]);
  });

  it('say both readings of a handicap’s parts', () => {
    const scoring = { ...challenge.scoring, scale: { by: 'span', reference: 2.4, power: 0.5 } };
    expect(sentencesOf('scoring', { scoring })).toContain(
      `Each score is multiplied by (span ÷ 2.4${space}m) to the power 0.5.`,
    );
  });
});
