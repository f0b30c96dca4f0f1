import { describe, expect, it } from 'vitest';
import { flightSentences, ruleSections } from '../../src/components/rule-sentences.ts';
import { challenge } from './almanac-fixture.ts';

function sentencesOf(id: string, changes: Partial<typeof challenge> = {}): readonly string[] {
  return (
    ruleSections({ ...challenge, ...changes }, 'metric').find((section) => section.id === id)?.sentences ?? []
  );
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
    expect(sentencesOf('protests')[0]).toContain('for 14 days');
    expect(sentencesOf('protests', { protests: null })).toEqual([
      'No time for protests is set. Write to the organiser.',
    ]);
  });

  it('raise the powers of units, and set a division apart from what it asks', () => {
    const limit = { low: null, high: { value: 6.5, included: true }, written: 'at most 6.5 g/dm2' };
    const division = {
      id: 'light',
      name: 'Light',
      conditions: [{ kind: 'figure', figure: 'wing-loading', limit }],
    } as const;
    expect(sentencesOf('divisions', { divisions: [division] })[0]).toBe(
      'Light – wing loading: at most 6.5 g/dm².',
    );
  });

  it('say where a limit stands whether its words include the value', () => {
    const span = (written: string, low: boolean | null, high: boolean | null) =>
      ({
        kind: 'figure',
        figure: 'span',
        limit: {
          low: low === null ? null : { value: 1, included: low },
          high: high === null ? null : { value: 2, included: high },
          written,
        },
      }) as const;
    const said = (...eligibility: (typeof challenge.eligibility)[number][]) =>
      sentencesOf('eligibility', { eligibility }).at(-1);
    expect(said(span('at least 1 m', true, null))).toBe(
      'Limits are compared without a tolerance: “at least” includes the value itself.',
    );
    expect(said(span('less than 2 m', null, false), span('1 m to 2 m', true, true))).toBe(
      'Limits are compared without a tolerance: “to” includes the value itself, “less than” leaves the value itself out.',
    );
    expect(said({ kind: 'fact', fact: 'control', allowed: ['free'] })).toBe('Control: free flight.');
    const drop = { low: { value: 1, included: false }, high: null, written: 'more than 1 m' };
    expect(sentencesOf('flying', { flying: { ...challenge.flying, drop } }).at(-1)).toContain(
      '“more than” leaves',
    );
  });

  it('ask for timekeepers under timing, and for links under evidence', () => {
    expect(sentencesOf('timing')[0]).toBe('A flight needs 2 timekeepers, or a video it was timed from.');
    expect(sentencesOf('evidence').join(' ')).not.toContain('timekeeper');
  });

  it('say both readings of a handicap’s parts', () => {
    const scoring = { ...challenge.scoring, scale: { by: 'span', reference: 2.4, power: 0.5 } };
    expect(sentencesOf('scoring', { scoring })).toContain(
      `Each score is multiplied by (span ÷ 2.4${space}m) to the power 0.5.`,
    );
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 2.54 m are 100 in.
    const inches = ruleSections(
      { ...challenge, scoring: { ...scoring, scale: { by: 'span', reference: 2.54, power: 0.5 } } },
      'imperial',
    );
    expect(inches.find(({ id }) => id === 'scoring')?.sentences).toContain(
      `Each score is multiplied by (span ÷ 100${space}in) to the power 0.5.`,
    );
  });
});

describe('what a flight needs', () => {
  const flying = {
    ...challenge.flying,
    launch: ['hand'],
    launchHeight: null,
    drop: null,
    release: null,
    attemptBelow: null,
    maximum: null,
    flightsPerDay: null,
    flights: null,
    evidence: { links: 2, shows: ['launch', 'weighing'] },
    timekeepers: { atLeast: 2, orVideo: true },
  } as const;
  const rounds = [{ id: 'one', maximum: 60, flyOff: false, from: null, to: null }];
  const days =
    'Flights from 1 April 2031 to 30 September 2031 count, both days included, by the calendar date at the flying place.';

  it('is said in the sentences of the rules, the days first', () => {
    expect(flightSentences({ ...challenge, reportBy: null, flying, rounds })).toEqual([
      days,
      'A flight names its round: one.',
      'A flight needs 2 links to its evidence.',
      'The evidence should show the launch and the weighing.',
      'A flight needs 2 timekeepers, or a video it was timed from.',
      'The model is thrown by hand.',
    ]);
  });

  it('is nothing but the days where the rules ask for nothing', () => {
    const nothing = {
      ...flying,
      launch: null,
      evidence: { links: 0, shows: [] },
      timekeepers: { atLeast: 0, orVideo: false },
    };
    expect(flightSentences({ ...challenge, reportBy: null, flying: nothing, rounds: [] })).toEqual([days]);
  });
});
