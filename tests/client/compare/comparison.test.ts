import { describe, expect, it } from 'vitest';
import { comparison } from '../../../src/client/compare/comparison.ts';
import { aircraft, number } from './invented-aircraft.ts';

const on = { prefix: 'a-', title: 'Side by side', explained: '/club/figures/' };
const plain = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

/** 20 m × 0.5 / 0.25 m/s = 40 s: half the height makes half the time. */
const lower = { told: '40.0 s', time: number(40, 0.1), height: number(20, 0.2) };
const { flown } = aircraft('Heron');

describe('aircraft side by side', () => {
  it('say which part made the time longer, and which are the same', () => {
    const text = plain(
      comparison([aircraft('Bittern', { flown: { ...flown, ...lower } }), aircraft('Heron')], on).text,
    );
    expect(text).toContain('Why did Heron fly longer?');
    expect(text).toContain('Heron stayed up 80.0 s, Bittern 40.0 s: 2 times as long.');
    expect(text).toContain(
      'Most of the difference is the energy height: by itself it makes the time 2 times as long.',
    );
    expect(text).toContain('Within twice the ± the energy use and the sinking speed are the same.');
    // By hand: 1 % twice is 1.4 % of 2, and ln 2 is 0.693.
    expect(text).toContain('× 2.000 ± 0.028');
    expect(text).toContain('0.693 ± 0.014');
  });

  it('do not explain what is within twice its ±', () => {
    const same = { ...flown, told: '80.1 s', time: number(80.1, 0.1) };
    const text = plain(comparison([aircraft('Heron'), aircraft('Bittern', { flown: same })], on).text);
    expect(text).toContain('within twice its ± the time is the same, so there is nothing to explain');
    expect(text).not.toContain('Most of the difference');
  });

  it('say that the figures do not say why, where no part stands out', () => {
    const vague = { ...flown, height: number(40, 20), use: number(0.5, 0.3), sink: number(0.25, 0.2) };
    const shorter = { ...vague, told: '40.0 s', time: number(40, 0.1), height: number(20, 10) };
    const text = plain(
      comparison([aircraft('Heron', { flown: vague }), aircraft('Bittern', { flown: shorter })], on).text,
    );
    expect(text).toContain('the largest, the energy height, may as well be nothing');
    expect(text).toContain('The figures do not say why.');
  });

  it('tell what is missing where a time cannot be taken apart', () => {
    const absent = { absent: 'needs a flight that can count' };
    const grounded = { told: '', time: absent, use: absent, height: absent, sink: absent };
    const text = plain(comparison([aircraft('Heron'), aircraft('Bittern', { flown: grounded })], on).text);
    expect(text).toContain('The time of Bittern cannot be taken apart: it needs a flight that can count.');
    expect(text).toContain('None of them has a chord or an area');
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  it('hold the longest of several against each of the others', () => {
    const third = { ...flown, told: '50.0 s', time: number(50, 0.1), height: number(25, 0.2) };
    const text = plain(
      comparison(
        [
          aircraft('Bittern', { flown: { ...flown, ...lower } }),
          aircraft('Heron'),
          aircraft('Plover', { flown: third }),
        ],
        on,
      ).text,
    );
    expect(text.indexOf('Heron against Plover')).toBeGreaterThan(0);
    expect(text.indexOf('Heron against Bittern')).toBeGreaterThan(text.indexOf('Heron against Plover'));
  });

  it('warn where they were flown under different rules', () => {
    const autumn = { challenge: { id: 'autumn', title: 'Autumn Trial 2031' } };
    const notice = 'flown in different challenges';
    expect(comparison([aircraft('Heron'), aircraft('Bittern', autumn)], on).text).toContain(notice);
    expect(comparison([aircraft('Heron'), aircraft('Bittern')], on).text).not.toContain(notice);
  });

  it('show what people wrote as text, never as markup', () => {
    const name = '<img src=x onerror=alert(1)> & "Co"';
    const facts = [
      { title: 'Motor', facts: [{ label: '<b>x</b>', shown: { metric: name, imperial: name } }] },
    ];
    const { text } = comparison([aircraft('Heron'), aircraft(name, { builders: name, facts })], on);
    expect(text).not.toMatch(/<img|<b>/);
    expect(text).toContain('&lt;img src=x onerror=alert(1)&gt; &amp; &quot;Co&quot;');
  });
});
