import { describe, expect, it } from 'vitest';
import { readAlmanac } from '../../../src/almanac/read-almanac.ts';
import { checked, withProblems } from '../../../src/client/enter/checked.ts';
import { checkedBesideSite } from '../../../src/client/enter/checked-beside-site.ts';
import { sideOf } from '../../../src/client/enter/side-markup.ts';
import type { EnterSite } from '../../../src/client/enter/site-data.ts';
import { enterSite } from '../../../src/components/enter/enter-site.ts';
import type { Problem } from '../../../src/entries/problems/problem.ts';
import { inFolder } from '../../entries/content-folder.ts';

const today = '2027-06-01';

const challenge = [
  'title: Long Haul',
  'opens: 2027-03-01',
  'closes: 2027-10-31',
  'flying: { evidence: { links: 1 }, timekeepers: 2, flights-per-day: 3 }',
  'rounds: [{ id: one, maximum: 60 s }]',
  'scoring: { method: rounds }',
];

const club = {
  'site.md': '---\nformat: 1\ntitle: Long Haul\naddress: https://haul.example/\n---\n',
  'challenges/haul.md': `---\n${challenge.join('\n')}\n---\n`,
  'rubber/fen-b.md': '---\nlabel: Fen B\nstrip: { width: 3.2 mm, thickness: 1.1 mm }\n---\n',
};

const aircraft = [
  'name: Plover',
  'builder: { handle: newt, name: N. Ewt, junior: true }',
  'control: free',
  'wing: { span: 1.2 m, chord: 13 cm }',
  'balance: 2 m',
  'mass: { airframe: 78 g }',
];
const motor = (batch: string, width: string) =>
  `motors: [{ count: 1, skein: { batch: ${batch}, strip: { width: ${width}, thickness: 1.1 mm }, strands: 8, length: 46 cm, mass: 40 g } }]`;
const flights = [
  'flights:',
  '  - { number: 1, date: 2027-05-09, watches: [38.42 s, 38.60 s], timekeepers: [otter, heron], turns: 900, round: one, evidence: [https://video.example/a] }',
  '  - { number: 2, date: 2027-05-10, time: 41.6 s, timekeepers: [otter, heron], turns: 2500, round: two, evidence: [https://video.example/b] }',
  '  - { number: 3, date: 2027-05-11, time: 41.6 s, timekeepers: [otter, heron], round: one }',
  '  - { number: 4, date: 2027-09-01, time: 900 s, timekeepers: [otter], round: one, evidence: [https://video.example/c] }',
];

async function both(fields: readonly string[]) {
  const text = `---\n${fields.join('\n')}\n---\n`;
  const files = { ...club, 'entries/haul/plover/entry.md': text };
  const almanac = await inFolder(files, (content) => readAlmanac({ content, now: `${today}T12:00:00Z` }));
  return { told: almanac.problems.map(line).sort(), text, site: enterSite(almanac) };
}

function line({ line, column, severity, code, message }: Problem): string {
  return `${line}:${column} ${severity} ${code}: ${message}`;
}

function inForm(text: string, site: EnterSite) {
  const haul = site.challenges[0] ?? null;
  const now = checkedBesideSite(checked(text, { challenge: 'haul', id: 'plover' }), site, haul);
  if (now.entry === null) throw new Error('The entry has mistakes.');
  const { markup, problems } = sideOf(now.entry, now.source, site, haul, today);
  return { markup, told: withProblems(now, problems).problems.map(line).sort() };
}

describe('what the form says of an entry', () => {
  it.for([
    ['a batch that nobody described', 'fen-a', '3.2 mm'],
    ['strip that is not of its batch', 'fen-b', '6.4 mm'],
  ] as const)('is what check says, with %s', async ([, batch, width]) => {
    const { told, text, site } = await both([...aircraft, motor(batch, width), ...flights]);
    const codes = new Set(told.map((one) => one.split(' ')[2]));
    const doubts = ['junior-named:', 'balance-beside-wing:', 'skein-mass-differs:', 'turns-above-break:'];
    const ofFlights = ['flight-does-not-count:', 'flight-in-future:', 'unknown-round:'];
    expect([...codes]).toEqual(
      expect.arrayContaining([
        ...doubts,
        ...ofFlights,
        batch === 'fen-a' ? 'unknown-batch:' : 'strip-differs:',
      ]),
    );
    expect(inForm(text, site).told).toEqual(told);
  });

  it('is nothing where nothing is amiss', async () => {
    const sound = aircraft.filter((one) => !/^builder|^balance/.test(one));
    const { told, text, site } = await both([
      ...sound,
      'builder: newt',
      motor('fen-b', '3.2 mm').replace(', mass: 40 g', ''),
      ...flights.slice(0, 2).map((one) => one.replace('turns: 900, ', '')),
    ]);
    expect(told).toEqual([]);
    expect(inForm(text, site).told).toEqual([]);
  });
});

describe('the flights in the form', () => {
  it('have their official times and what they lack', async () => {
    const { text, site } = await both([...aircraft, motor('fen-b', '3.2 mm'), ...flights]);
    const { markup } = inForm(text, site);
    const rows = [...markup.matchAll(/<li class="(?:met|not-met)"><span>(Flight.*?)<\/li>/g)].map(
      ([, row = '']) =>
        row
          .replace(/<[^>]*>/g, ' ')
          .replace(/\s+/g, ' ')
          .trim(),
    );
    // By hand: (38.42 + 38.60) / 2 = 38.51, rounded down to a tenth. The reasons are those of the contest's verdicts.
    expect(rows).toEqual([
      'Flight 1: 38.5 s can count mean of 38.42 s and 38.60 s, rounded down to 0.1 s',
      'Flight 2: 41.6 s does not count names the round &quot;two&quot;, which this challenge does not have',
      'Flight 3: 41.6 s does not count no links to evidence; needs 1',
      'Flight 4: 900.0 s does not count 1 timekeeper; needs 2',
    ]);
  });
});
