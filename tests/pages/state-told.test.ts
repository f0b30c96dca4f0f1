import { describe, expect, it } from 'vitest';
import { toldOfState } from '../../src/components/state-told.ts';
import type { FrozenResult } from '../../src/contest/frozen/frozen.ts';
import { challenge } from '../contest/invented-challenge.ts';

// The wording is the project's own; the dates are worked out by hand beside each check.

const rules = challenge({
  timeZone: 'Europe/Dublin',
  reportBy: '2027-11-14',
  final: '2027-12-15',
  protests: 14 * 86_400,
});

describe('the state of a challenge', () => {
  it('is told of an announced one: when it opens, and what counts', () => {
    const { headline, sentences } = toldOfState({ challenge: rules, state: 'announced', frozen: null });
    expect(headline).toContain('1 March 2027');
    expect(sentences).toHaveLength(2);
    expect(sentences.join(' ')).toContain('14 November 2027');
  });

  it('is told of an open one: until when, by which clock, and when it becomes final', () => {
    const { headline, sentences } = toldOfState({ challenge: rules, state: 'open', frozen: null });
    expect(headline).toMatch(/31 October 2027.*Europe\/Dublin/);
    expect(sentences.join(' ')).toContain('15 December 2027');
  });

  it('is told of a closed one: provisional, and until when protests are heard', () => {
    const { sentences } = toldOfState({ challenge: rules, state: 'closed', frozen: null });
    // Fourteen days after 14 November, the last day for handing in.
    expect(sentences.join(' ')).toContain('28 November 2027');
    expect(sentences.join(' ')).toContain('15 December 2027');
  });

  it('leaves out what the rules do not set', () => {
    const { sentences } = toldOfState({ challenge: challenge(), state: 'closed', frozen: null });
    expect(sentences).toHaveLength(2);
    expect(sentences.join(' ')).not.toMatch(/null|undefined|\d{4}/);
  });

  it('is told of a final one: since when, and by what it was frozen', () => {
    const frozen = { closed: '2027-12-16', generator: '1.4.2' } as FrozenResult;
    const { headline, sentences } = toldOfState({ challenge: rules, state: 'final', frozen });
    expect(headline).toContain('16 December 2027');
    expect(sentences[0]).toContain('1.4.2');
  });
});
