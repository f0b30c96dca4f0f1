import { expect, it } from 'vitest';
import { awaitingText } from '../../../scripts/terminal/awaiting-text.ts';

// Pinned: the wording is the project's own.
it('tells everything in sections, with what people wrote made safe to print', () => {
  const text = awaitingText(
    {
      challenge: 'haul',
      title: 'Long Haul',
      state: 'closed',
      today: '2027-11-20',
      awaiting: [
        {
          entry: 'plover',
          name: 'Plover\u001b[2J',
          flights: [
            {
              number: 3,
              date: '2027-10-30',
              days: 21,
              seconds: 41.6,
              waits: [
                {
                  kind: 'new-ruling',
                  ruledOn: '2027-11-01',
                  changes: [{ what: 'flying-mass', ruled: '0.649 kg', now: '0.611 kg' }],
                },
                { kind: 'evidence', given: 0, needed: 1 },
                { kind: 'timekeepers', given: 1, needed: 2, orVideo: true },
                { kind: 'near-limit', sentence: 'the span of 2.01 m is above the limit of at most 2 m' },
                { kind: 'inspection', figure: 'span' },
              ],
              place: { before: 7, after: 4 },
            },
          ],
        },
      ],
      changedAfterRuling: [],
      doubts: [],
      leftOut: ['lantern'],
      handles: [],
      rules: [],
      deadlines: [{ kind: 'protests', date: '2027-11-21' }],
      closeNow: true,
      shows: ['launch', 'landing'],
    },
    '',
  );
  expect(text).toBe(`Long Haul (haul), closed on 2027-11-20

  Flights that wait
    Plover<U+001B>[2J (plover)
      flight 3, 41.60 s, flown 30 October 2027, 21 days ago
        waits for a new ruling: ruled on 1 November 2027, and the flying mass was 0.649 kg then and is 0.611 kg now
        waits for evidence: 0 links of 1
        waits for timekeepers: 1 of 2, or a time from the video
        waits for a decision about a limit: the span of 2.01 m is above the limit of at most 2 m, which is inside the measuring error
        waits for an inspection of the span, which would help with that
        If accepted, it would move from 7th to 4th.
        npm run ruling -- haul/plover 3 accept --by … --seen launch,landing

  Entries left out, being looked at
    lantern

  Dates to come
    2027-11-21  last day for protests

  The day of the final result has come: npm run close -- haul
`);
});
