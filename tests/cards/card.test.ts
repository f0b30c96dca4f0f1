import { describe, expect, it } from 'vitest';
import { cardOf } from '../../src/cards/card.ts';
import { cardPicture } from '../../src/cards/card-picture.ts';
import { contrast, parseColour } from '../../src/components/accent.ts';
import { almanacOf, challenge, challengeRecord, entryRecord } from '../pages/almanac-fixture.ts';

const club = challengeRecord([41.7, 38.2, 31, 29.4]);
const card = (record = club, changes: Parameters<typeof almanacOf>[1] = {}) =>
  cardOf(almanacOf([record], changes), record);

describe('a card', () => {
  it('tells the first three of the board, with their times', () => {
    expect(card().rows.map(({ place, aircraft, score }) => [place, aircraft.plain, score])).toEqual([
      [1, 'm1', '41.7\u00a0s'],
      [2, 'm2', '38.2\u00a0s'],
      [3, 'm3', '31.0\u00a0s'],
    ]);
  });

  it('says of a score that it rests on a flight without a ruling', () => {
    const { result } = club;
    const standings = result.standings.map((one) => ({ ...one, provisional: one.place === 2 }));
    const told = card({ ...club, result: { ...result, standings } });
    expect(told.rows.map(({ note }) => note)).toEqual([null, 'provisional', null]);
  });

  it('shows the first aircraft from above', () => {
    const { plan } = card();
    expect(plan?.name.plain).toBe('m1');
    expect(plan?.svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"[^>]*>[\s\S]*<path [^>]*d="M/);
  });

  it('tells where the challenge stands and what its target is', () => {
    const { state, target, title, site } = card();
    expect(state).toBe('Open until the end of 30 September 2031, UTC.');
    expect(target).toEqual({ text: 'Target: 30\u00a0s (Half a minute)', plain: 'Target: 30\u00a0s' });
    expect([title.text, site.text]).toEqual(['Spring Trial 2031', 'Hollow Marsh Trials']);
  });

  it('names a junior by handle alone', () => {
    const young = entryRecord('m1', 41.7, {
      builders: [{ handle: 'wren', name: 'Wilma Renner', club: null, junior: true }],
    });
    const told = card(challengeRecord([41.7], [young]));
    expect(told.rows[0]?.builders).toEqual([{ text: 'wren', plain: 'wren' }]);
    expect(JSON.stringify(told)).not.toContain('Renner');
  });

  it('says what is to be said of an empty board', () => {
    const empty = challengeRecord([]);
    const announced = { ...empty, state: 'announced' as const };
    const [first] = challengeRecord([40]).entries;
    const unflown = { ...empty, entries: first === undefined ? [] : [first] };
    expect(
      [card(empty), card(unflown), card(announced)].map(({ nobody, rows, plan }) => [nobody, rows, plan]),
    ).toEqual([
      ['No aircraft has been entered yet.', [], null],
      ['No flight counts yet.', [], null],
      ['Flights count from the opening day on; until then there is nothing to rank.', [], null],
    ]);
  });

  it('drops marks that turn the direction of writing, and line ends', () => {
    const turned = { ...club, challenge: { ...challenge, title: 'Spring\n\u202eTrial\u2066 \u0007 2031' } };
    expect(card(turned).title.text).toBe('Spring Trial 2031');
  });

  it('draws its line in a colour that can be read on paper', () => {
    // WCAG 2.2, success criterion 1.4.3: 4.5 to 1. Yellow on paper has hardly more than 1.
    const { accent } = card(club, { site: { ...almanacOf([]).site, accent: '#ffee00' } });
    expect(contrast(parseColour(accent)!, parseColour('#fbfaf5')!)).toBeGreaterThanOrEqual(4.5);
  });
});

describe('the address of a card', () => {
  const path = (record = club) => cardPicture(card(record)).path;

  it('is the same for the same board, whatever else changes', () => {
    expect(path()).toMatch(/^\/assets\/cards\/spring-[0-9a-f]{16}\.png$/);
    expect(path({ ...club, html: '<p>Something else.</p>' })).toBe(path());
  });

  it.each([
    ['a time', challengeRecord([41.8, 38.2, 31, 29.4])],
    ['the state', { ...club, state: 'closed' as const }],
    ['the title', { ...club, challenge: { ...challenge, title: 'Spring Trial' } }],
  ])('is another one where %s changes', (_, changed) => {
    expect(path(changed)).not.toBe(path());
  });

  it('comes with words for those who do not see it', () => {
    expect(cardPicture(card(challengeRecord([41.7]))).alt).toMatch(
      /^Spring Trial 2031\. Open until the end of 30 September 2031, UTC\. In front: 1, .+, 41\.7\u00a0s\.$/,
    );
    expect(cardPicture(card(challengeRecord([]))).alt).toBe(
      'Spring Trial 2031. Open until the end of 30 September 2031, UTC.',
    );
  });
});
