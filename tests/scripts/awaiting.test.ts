import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { call } from './called.ts';

// Expected values are read off the files of the demo by eye and worked out by hand beside each check; no source outside.

const demo = resolve(import.meta.dirname, '../../content');
const at = '2026-11-25';
const season = 'slow-thread-2026';
let folder: string;
let content: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'awaiting-'));
  content = join(folder, 'content');
  // Of the other seasons nothing is asked here.
  for (const part of [
    'site.md',
    'builders',
    'rubber',
    `challenges/${season}.md`,
    `entries/${season}`,
    `rulings/${season}`,
  ])
    cpSync(join(demo, part), join(content, part), { recursive: true });
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function edit(file: string, from: string | RegExp, to: string): void {
  const path = join(content, file);
  const before = readFileSync(path, 'utf8');
  const after = before.replace(from, to);
  expect(after).not.toBe(before);
  writeFileSync(path, after);
}

async function told(challenge = 'slow-thread-2026'): Promise<string> {
  const { code, out, error } = await call('awaiting', [challenge, '--content', content, '--now', at]);
  expect(error).toBe('');
  expect(code).toBe(0);
  return out;
}

function commit(author: string, date: string): void {
  const git = (...args: string[]) =>
    execFileSync('git', args, {
      cwd: content,
      env: {
        ...process.env,
        GIT_CONFIG_GLOBAL: '/dev/null',
        GIT_AUTHOR_NAME: author,
        GIT_AUTHOR_EMAIL: `${author}@club.example`,
        GIT_COMMITTER_NAME: 'desk',
        GIT_COMMITTER_EMAIL: 'desk@club.example',
        GIT_AUTHOR_DATE: `${date}T12:00:00Z`,
        GIT_COMMITTER_DATE: `${date}T12:00:00Z`,
      },
    });
  git('init', '--quiet');
  git('add', '.');
  git('commit', '--quiet', '--message', 'As it is');
}

describe('npm run awaiting', () => {
  it('tells of the demo as it is, each flight with the command to type next', async () => {
    const out = await told();
    // 24 October to 25 November: 7 days of October and 25 of November.
    expect(out).toContain(
      [
        '  Flights that wait',
        '    Jacquard No. 4 (jacquard)',
        '      flight 5, 51.70 s, flown 24 October 2026, 32 days ago',
        '        waits for a ruling',
        '        If accepted, it would stay 11th.',
        `        npm run ruling -- slow-thread-2026/jacquard 5 accept --by … --seen launch,whole-flight,landing,weighing,span --content ${content}`,
      ].join('\n'),
    );
    expect(out).not.toContain('Changed after a ruling');
    expect(out).toContain('could not be looked at');
  });

  it('lists a flight that was edited behind its acceptance', async () => {
    edit('entries/slow-thread-2026/jacquard/entry.md', '[44.6 s, 44.4 s]', '[46.6 s, 46.4 s]');
    const out = await told();
    expect(out).toContain(
      'jacquard flight 4, accepted on 2026-10-05: what is written about the flight has changed since',
    );
    expect(out).toMatch(
      /flight 4, .*\n {8}waits for a new ruling: ruled on 5 October 2026, and what is written/,
    );
  });

  it('shows both values where an airframe got lighter behind a ruling', async () => {
    edit('entries/slow-thread-2026/jacquard/entry.md', 'airframe: 1.32 kg', 'airframe: 1.28 kg');
    const out = await told();
    // Four skeins of 28.0 g and four of 21.5 g are 198 g: 1.518 kg with 1.32 kg of airframe, 1.478 kg with 1.28 kg;
    // three digits tell them apart, and the rules write this limit in kg.
    for (const flight of [1, 2, 3, 4])
      expect(out).toMatch(
        new RegExp(
          `jacquard flight ${flight}, accepted on [-\\d]+: .*the flying mass was 1\\.52 kg then and is 1\\.48 kg now`,
        ),
      );
    expect(out.match(/waits for a new ruling: .*flying mass/g)).toHaveLength(4);
  });

  it('lists a refusal whose flight changed since, and that it stands', async () => {
    edit(
      'rulings/slow-thread-2026/tenterhook.md',
      'flight: 3\n    verdict: accepted',
      'flight: 3\n    verdict: refused\n    reason: The landing is not on the video.',
    );
    expect(await told()).not.toContain('Changed after a ruling');
    edit('entries/slow-thread-2026/tenterhook/entry.md', '[46.8 s, 47.1 s]', '[56.8 s, 57.1 s]');
    const out = await told();
    expect(out).toMatch(
      /tenterhook flight 3, refused on [-\d]+: what is written about the flight has changed since; the verdict stands until ruled anew/,
    );
  });

  it('says 2 for a challenge that is not there, and names the nearest', async () => {
    const { code, error } = await call('awaiting', ['slow-thred-2026', '--content', content, '--now', at]);
    expect(code).toBe(2);
    expect(error).toContain('Did you mean "slow-thread-2026"?');
  });
});

describe('the history in git', () => {
  it('tells of a rule changed after the opening without an amendment', async () => {
    commit('amadou-k', '2026-03-20');
    edit(
      'challenges/slow-thread-2026.md',
      '  attempt-below: 5 s\n',
      '  attempt-below: 5 s\n  maximum: 180 s\n',
    );
    commit('amadou-k', '2026-09-01');
    const out = await told();
    expect(out).toMatch(/2026-09-01, [0-9a-f]{10}\n {6}flying\.maximum: none → 180 s\n {6}no amendment/);
  });

  it('names the amendment that came with a change', async () => {
    commit('amadou-k', '2026-03-20');
    edit('challenges/slow-thread-2026.md', '  attempt-below: 5 s\n', '  attempt-below: 6 s\n');
    edit(
      'challenges/slow-thread-2026.md',
      'amendments:\n',
      'amendments:\n  - { date: 2026-09-02, what: "An attempt is shorter than 6 s." }\n',
    );
    commit('amadou-k', '2026-09-03');
    expect(await told()).toContain(
      '      flying.attempt-below: 5 s → 6 s\n      may be told by the amendment of 2026-09-02',
    );
  });

  it('is silent about a change before the opening', async () => {
    commit('amadou-k', '2026-03-20');
    edit('challenges/slow-thread-2026.md', '  attempt-below: 5 s\n', '  attempt-below: 6 s\n');
    commit('amadou-k', '2026-04-03');
    expect(await told()).not.toContain('Rules changed');
  });

  it('asks about an entry under a handle that only others had written', async () => {
    commit('hettie', '2026-03-20');
    const file = 'entries/slow-thread-2026/new-thread/entry.md';
    const first = readFileSync(join(content, 'entries/slow-thread-2026/jacquard/entry.md'), 'utf8');
    const handle = /^builder: *(?:\{ *handle: *)?([a-z-]+)/m.exec(first)?.[1];
    cpSync(
      join(content, 'entries/slow-thread-2026/jacquard'),
      join(content, 'entries/slow-thread-2026/new-thread'),
      {
        recursive: true,
      },
    );
    commit('somebody', '2026-06-01');
    const out = await told();
    expect(out).toContain(
      `${file} names ${handle}; the earlier files of that handle came from other authors: `,
    );
  });

  it('says of a history that is cut off that the part before could not be looked at', async () => {
    commit('amadou-k', '2026-03-20');
    edit('challenges/slow-thread-2026.md', '  attempt-below: 5 s\n', '  attempt-below: 6 s\n');
    commit('amadou-k', '2026-09-03');
    const whole = content;
    content = join(folder, 'cut');
    execFileSync('git', ['clone', '--quiet', '--depth', '1', `file://${whole}`, content]);
    const out = await told();
    expect(out).toContain('whatever came before its first commit here could not be looked at');
    expect(out).not.toContain('Rules changed');
  });
});
