import { describe, expect, it } from 'vitest';
import { readJsonSource } from '../../../src/entries/source/read-source.ts';
import { understandFrozenResult } from '../../../src/entries/understand/frozen-result.ts';
import { understandNews } from '../../../src/entries/understand/news.ts';
import { allTold, rulingOf, sourceOf } from '../written.ts';

// What is checked is content format 1; the wording is this project's own. Places were counted by hand.

describe('a ruling', () => {
  it('rules a flight once', () => {
    expect(
      allTold(
        rulingOf(`flights:
  - { flight: 1, verdict: accepted, by: otter, date: 2027-05-12 }
  - { flight: 1, verdict: accepted, by: heron, date: 2027-05-13 }`),
      ),
    ).toEqual([
      '4:15 duplicate-ruling: `flight`: flight 1 is ruled twice. Keep the ruling that holds, and move the other to its `earlier`.\n(3:15 flight 1 is ruled here first)',
    ]);
  });

  it('says why where it refuses', () => {
    const ruling = rulingOf('flights: [{ flight: 3, verdict: void, by: otter, date: 2027-05-12 }]');
    expect(allTold(ruling)).toEqual([
      '2:33 reason-missing: Flight 3 is void, and no reason is given. Write one that its builder can read, such as `reason: The landing is not on the video.`\n-> reason: The landing is not on the video.',
    ]);
    expect(ruling.ruling).not.toBeNull();
  });

  it('is confirmed by somebody else', () => {
    const ruling = rulingOf(
      'flights: [{ flight: 3, verdict: accepted, by: otter, second: otter, date: 2027-05-12 }]',
    );
    expect(allTold(ruling)).toEqual([
      '2:62 second-is-the-first: `second`: "otter" confirms a decision of their own on flight 3. Name somebody else, or leave `second` out.\n(2:47 "otter" decided)',
    ]);
    expect(ruling.ruling).not.toBeNull();
  });

  it('rests on facts and figures there are', () => {
    const ruled =
      'flights: [{ flight: 3, verdict: accepted, by: otter, date: 2027-05-12, as-ruled: { spam: 3 m } }]';
    expect(allTold(rulingOf(ruled))).toEqual([
      '2:84 unknown-figure: `as-ruled.spam` in flight 3: "spam" is not a figure. Write a figure of the model, such as span or flying-mass. Did you mean "span"?\n-> span',
    ]);
  });
});

describe('an announcement', () => {
  it('has the date of its name', () => {
    const source = sourceOf('title: Open\ndate: 2027-03-02');
    expect(allTold(understandNews(source, { id: '2027-03-01-open' }))).toEqual([
      '3:7 name-differs: `date` is 2027-03-02, but the file\'s name says 2027-03-01. Correct the date, or name the file like "2027-03-02-a-few-words.md".\n-> 2027-03-01',
    ]);
  });
});

describe('a frozen result', () => {
  it('is as the command writes it', () => {
    const { source } = readJsonSource('results/a.json', '{\n  "format": 2\n}');
    if (source === null) throw new Error('not read');
    expect(allTold(understandFrozenResult(source, { challenge: 'a' }))[0]).toBe(
      '2:13 not-a-frozen-result: `format` is not as `npm run close` writes it (Invalid input: expected 1). Take the file back from the history, or freeze the result again.',
    );
  });
});
