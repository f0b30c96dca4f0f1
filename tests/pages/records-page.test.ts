import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ChallengeRecord } from '../../src/almanac/almanac.ts';
import type { AcceptedFlight } from '../../src/contest/history/accepted-flight.ts';
import type { History } from '../../src/contest/history/history.ts';
import { noHistory } from '../contest/history/no-history.ts';
import { almanacOf, challenge, challengeRecord, entryRecord } from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

function flown(entry: string, date: string, seconds: number, builder: string): AcceptedFlight {
  return {
    entry,
    number: 1,
    builders: [builder],
    flown: { date, time: null, offset: null, written: date },
    seconds,
    span: { value: 2, u: 0.005 },
    reachedTarget: seconds >= 30,
  };
}

const wren = flown('wren', '2031-04-20', 22.5, 'small-fox');
const heron = flown('heron', '2031-05-04', 44, 'mthorn');
const target = { time: 30, label: 'Half a minute' };

const history: History = {
  flights: [wren, heron],
  target,
  time: [
    { flight: wren, value: 22.5, gain: null },
    { flight: heron, value: 44, gain: 21.5 },
  ],
  span: [{ flight: heron, value: 2, gain: null }],
  honour: [{ entry: 'heron', first: heron, best: heron, times: 1 }],
  milestones: [
    { time: 20, label: 'Twenty <b>seconds</b>', first: wren, entries: 2 },
    { time: 60, label: 'A minute', first: null, entries: 0 },
  ],
  records: [
    {
      kind: 'best-time',
      division: null,
      value: 44,
      entry: 'heron',
      flight: 1,
      date: '2031-05-04',
      u: null,
    },
    { kind: 'span', division: null, value: 2, entry: 'heron', flight: 1, date: '2031-05-04', u: 0.005 },
    {
      kind: 'best-time',
      division: 'dropped',
      value: 22.5,
      entry: 'wren',
      flight: 1,
      date: '2031-04-20',
      u: null,
    },
  ],
  personalBests: [
    { builder: 'mthorn', best: heron, first: heron, improvements: 0, flights: 1 },
    { builder: 'small-fox', best: wren, first: wren, improvements: 0, flights: 1 },
  ],
};

function another(id: string, title: string, changes: Partial<ChallengeRecord>): ChallengeRecord {
  return { ...challengeRecord([], []), challenge: { ...challenge, id, title }, ...changes };
}

function textOf(html: string): string {
  return html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');
}

describe('the page of the records', () => {
  let site: BuiltPages;
  const read = async (id: string) => site.page(`challenges/${id}/records/`);

  beforeAll(async () => {
    const junior = [{ handle: 'small-fox', name: 'Secret Name', club: null, junior: true }];
    const spring = challengeRecord(
      [44, 22.5],
      [entryRecord('heron', 44), entryRecord('wren', 22.5, { builders: junior })],
    );
    // A final challenge of which the only aircraft is gone, and whose target nobody reached.
    const gone = flown('gone', '2030-05-04', 12, 'mthorn');
    const old = another('autumn', 'Autumn Trial 2030', {
      state: 'final',
      result: {
        ...spring.result,
        entries: new Map(),
        standings: [{ ...spring.result.standings[0]!, entry: 'gone', score: 12, flights: [1] }],
      },
      history: {
        ...noHistory,
        flights: [gone],
        target,
        time: [{ flight: gone, value: 12, gain: null }],
        personalBests: [{ builder: 'mthorn', best: gone, first: gone, improvements: 0, flights: 1 }],
      },
    });
    site = await buildPages(
      almanacOf([{ ...spring, history }, another('quiet', 'Quiet Trial', {}), old], { featured: 'spring' }),
    );
  });

  afterAll(() => site.remove());

  it('opens with the staircase, named and described, and a table of its steps', async () => {
    const html = await read('spring');
    expect(html).toContain(
      '<title id="progress-title">Progress of the best time of Spring Trial 2031</title>',
    );
    expect(html).toContain('A staircase of 2 steps that ends at 44.0\u00a0s, flown on 4 May 2031.');
    expect(textOf(html)).toMatch(/20 April 2031 22\.5 s the first Model wren flight 1 small-fox/);
    expect(textOf(html)).toMatch(/4 May 2031 44\.0 s \+21\.5 s Model heron flight 1 M\. Thorn/);
  });

  it('leads to the flights, below the base path', async () => {
    expect(await read('spring')).toContain(`href="${base}entries/spring/heron/#flight-1"`);
  });

  it('names a junior by the handle only', async () => {
    const html = await read('spring');
    expect(html).toContain('small-fox');
    expect(html).not.toContain('Secret Name');
  });

  it('tells who passed a milestone, and escapes what the organiser wrote', async () => {
    const html = await read('spring');
    expect(html).toContain('Twenty &lt;b&gt;seconds&lt;/b&gt;');
    expect(textOf(html)).toContain('2 aircraft');
    expect(textOf(html)).toMatch(/A minute 60 s not passed yet/);
  });

  it('shows spans with their ±, and a division that is gone from the rules by its id', async () => {
    const text = textOf(await read('spring'));
    expect(text).toContain('2.0000 ± 0.0050');
    expect(text).toMatch(/dropped 22\.5 s Model wren/);
  });

  it('says that nothing has been accepted, and nothing more', async () => {
    const html = await read('quiet');
    expect(html).toContain('No flight has been accepted yet.');
    expect(html).not.toContain('Honour roll');
    expect(html).not.toContain('Personal bests');
  });

  it('says of a final challenge that nobody reached its target', async () => {
    const text = textOf(await read('autumn'));
    expect(text).toContain('Nobody reached 30 s.');
    expect(text).toContain('No aircraft whose span is known reached 30 s.');
    expect(text).toContain('nothing here changes any more');
  });

  it('names an aircraft that is gone without leading anywhere', async () => {
    const html = await read('autumn');
    expect(textOf(html)).toMatch(/gone flight 1/);
    expect(html).not.toContain('entries/autumn/gone/');
  });

  it('lists the other challenges that have a result, as they stand or ended', async () => {
    expect(textOf(await read('quiet'))).toMatch(
      /Spring Trial 2031 led by Model heron 44\.0 s 44\.0 s Model heron flight 1/,
    );
    expect(textOf(await read('spring'))).toMatch(/Autumn Trial 2030 won by gone 12\.0 s/);
    expect(textOf(await read('spring'))).not.toContain('Quiet Trial 44');
  });
});
