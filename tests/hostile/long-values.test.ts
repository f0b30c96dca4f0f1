import { describe, expect, it } from 'vitest';
import { readThrustLog } from '../../src/entries/logs/read-log.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import type { SourceDocument } from '../../src/entries/source/source.ts';
import { splitFile } from '../../src/entries/source/split-file.ts';
import { understandBatch } from '../../src/entries/understand/batch.ts';
import { understandChallenge } from '../../src/entries/understand/challenge.ts';
import { understandEntry } from '../../src/entries/understand/entry.ts';
import { understandRuling } from '../../src/entries/understand/ruling.ts';
import { understandSite } from '../../src/entries/understand/site.ts';
import { smallestChallenge, smallestEntry } from '../entries/written.ts';

// A pattern that can match one text in many ways takes the square of its length, or worse, to find that it matches in none.
// No list of such patterns is kept here: values of a hundred kilobytes, made of what fields are made of, go into fields of
// every kind, and each must be answered at once.

const pieces = [
  ...[
    '1',
    '1 ',
    '1/',
    '1/1 ',
    '1.',
    '1,',
    '1,111',
    ' ',
    '± ',
    'm',
    'm·',
    'm/',
    'N·m ',
    '54 x ',
    '-',
    '- ',
    "'",
  ],
  ...[
    ':',
    '1:',
    '(',
    '[',
    '@',
    'a@',
    'a.',
    'a',
    'a-',
    '.',
    '/',
    '\\',
    'http://',
    'https://a/',
    '%',
    '° ',
    '½',
  ],
  ...['at least ', 'to ', '1 to ', '1e', 'é', '\t', '−', '1 ft ', '2027-', 'Europe/'],
];

const flight = (field: string) =>
  `${smallestEntry}\nflights: [{ number: 1, date: 2027-05-09, time: 3 s, ${field} }]`;
const asEntry = (source: SourceDocument) => understandEntry(source, { challenge: 'c', id: 'e' });
const asChallenge = (source: SourceDocument) => understandChallenge(source, { id: 'c' });

const fields: Readonly<
  Record<
    string,
    readonly [
      (value: string) => string,
      (source: SourceDocument) => { readonly problems: readonly Problem[] },
    ]
  >
> = {
  'a name': [(value) => smallestEntry.replace('Plover', value), asEntry],
  'a handle': [(value) => smallestEntry.replace('amarsh', value), asEntry],
  'a length': [(value) => `${smallestEntry}\nnose: ${value}`, asEntry],
  'a balance': [(value) => `${smallestEntry}\nbalance: ${value}`, asEntry],
  'a day': [(value) => `${smallestEntry}\nentered: ${value}`, asEntry],
  'an entry': [(value) => `${smallestEntry}\nalso: ${value}`, asEntry],
  'a key': [(value) => `${smallestEntry}\n? ${value}\n: 1`, asEntry],
  turns: [(value) => flight(`turns: ${value}`), asEntry],
  'a torque': [(value) => flight(`launch-torque: ${value}`), asEntry],
  'a temperature': [(value) => flight(`weather: { temperature: ${value} }`), asEntry],
  'a link': [(value) => flight(`evidence: [${value}]`), asEntry],
  'a limit': [(value) => `${smallestChallenge}\neligibility: { span: ${value} }`, asChallenge],
  'a time zone': [(value) => `${smallestChallenge}\ntime-zone: ${value}`, asChallenge],
  'a step of a tie-break': [(value) => `${smallestChallenge}\ntie-break: [${value}]`, asChallenge],
  'an allowance': [(value) => `${smallestChallenge}\nflying: { flights-per-day: ${value} }`, asChallenge],
  timekeepers: [(value) => `${smallestChallenge}\nflying: { timekeepers: ${value} }`, asChallenge],
  'a mail address': [(value) => `format: 1\ntitle: x\nsend-to: ${value}`, understandSite],
  'an address': [(value) => `format: 1\ntitle: x\naddress: ${value}`, understandSite],
  'a density': [(value) => `label: x\ndensity: ${value}`, (source) => understandBatch(source, { id: 'b' })],
  'a seal': [
    (value) => `flights: [{ flight: 1, verdict: accepted, by: x, seal: ${value} }]`,
    (source) => understandRuling(source, { challenge: 'c', entry: 'e' }),
  ],
};

const long = 100_000;
const atOnce = 1000;

function timeOf(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

describe('a value of a hundred kilobytes', () => {
  it.each(Object.entries(fields))('in the place of %s is answered at once', (_, [write, understand]) => {
    for (const piece of pieces) {
      const value = JSON.stringify(`${piece.repeat(long / piece.length)}!`);
      let problems: readonly Problem[] = [];
      const time = timeOf(() => {
        const read = readSource('file.md', `---\n${write(value)}\n---\n`, splitFile);
        problems = [...read.problems, ...(read.source === null ? [] : understand(read.source).problems)];
      });
      expect([piece, time < atOnce]).toEqual([piece, true]);
      expect([piece, problems.some(({ severity }) => severity === 'error')]).toEqual([piece, true]);
      for (const { message } of problems) expect(message.length).toBeLessThan(2 * long);
    }
  });

  it('is told by its beginning and its length', () => {
    const { source } = readSource(
      'file.md',
      `---\n${smallestEntry}\nnose: "${'1 '.repeat(300)}"\n---\n`,
      splitFile,
    );
    const [problem] = source === null ? [] : asEntry(source).problems;
    expect(problem?.code).toBe('too-long');
    expect(problem?.message).toBe(
      `\`nose\`: "${'1 '.repeat(20)}…" has 600 characters. Write at most 500 of them; what there is to tell has its place in the text below the fields.`,
    );
  });

  it.each(pieces)('of %j as the heading of a log is answered at once', (piece) => {
    const header = `time${piece.repeat(long / piece.length)}!,thrust [g]`;
    const time = timeOf(() => {
      expect(readThrustLog('a.csv', `${header}\n0,1\n1,0\n`).points).toBeNull();
    });
    expect(time).toBeLessThan(atOnce);
  });
});
