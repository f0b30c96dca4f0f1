import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { workflowFaults } from './workflow-faults.ts';

const root = resolve(import.meta.dirname, '../..');
const folder = resolve(root, '.github/workflows');
const read = (file: string) => readFileSync(resolve(folder, file), 'utf8');
const scripts = Object.keys(JSON.parse(readFileSync(resolve(root, 'package.json'), 'utf8')).scripts);
const check = read('check.yml');
const expression = (inside: string) => `\${{ ${inside} }}`;

describe('the workflows', () => {
  it.each(readdirSync(folder))('%s is safe to run on what strangers send', (file) => {
    expect(workflowFaults(read(file), scripts)).toEqual([]);
  });

  it('name the version of each pinned action beside it', () => {
    const uses = readdirSync(folder).flatMap((file) =>
      read(file)
        .split('\n')
        .filter((line) => /^\s*(?:- )?uses:/.test(line)),
    );
    expect(uses.length).toBeGreaterThan(0);
    for (const line of uses) expect(line).toMatch(/@[0-9a-f]{40} # v\d+\.\d+\.\d+$/);
  });

  it('check a pull request with the tools of the branch it is for', () => {
    const { steps } = parse(check).jobs.check;
    const tools = steps.find((step: { with?: { path?: string } }) => step.with?.path === 'base');
    expect(tools.with.ref).toBe(expression('github.base_ref'));
    for (const step of steps.filter(({ run = '' }) => run.includes('npm')))
      expect(step['working-directory']).toBe('base');
  });

  it('tell in the summary what a pull request changes, also where the check fails, and cannot fail by it', () => {
    const { steps } = parse(check).jobs.check;
    const tells = steps.filter(({ run = '' }: { run?: string }) => run.includes('npm run review'));
    expect(tells).toHaveLength(1);
    const [tell] = tells;
    expect(tell.run).toContain('--base-content content --content ../head/content');
    expect(tell.run).toMatch(/--silent .*>> "\$GITHUB_STEP_SUMMARY"$/);
    expect(tell.if).toBe(expression('!cancelled()'));
    expect(tell['continue-on-error']).toBe(true);
    const places = ['npm run check', 'npm run review', 'npm run build'].map((line) =>
      steps.findIndex(({ run = '' }: { run?: string }) => run.includes(line)),
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('deploy one at a time, and never cut one off', () => {
    expect(parse(read('publish.yml')).concurrency).toEqual({ group: 'publish', 'cancel-in-progress': false });
  });

  it('publish on a change and once a day', () => {
    const { on } = parse(read('publish.yml'));
    expect(on.push).toEqual({ branches: ['main'] });
    expect(on.schedule).toEqual([{ cron: expect.stringMatching(/^\d+ \d+ \* \* \*$/) }]);
  });
});

describe('the examples for other forges', () => {
  const text = readFileSync(resolve(root, '.github/CONTRIBUTING.md'), 'utf8');
  const examples = [...text.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, yaml]) => parse(yaml ?? ''));
  const [gitlab, forgejo] = examples;

  it('put no expression into a shell line, and name commands that exist', () => {
    expect(examples).toHaveLength(2);
    const lines: string[] = [...gitlab.check.script, forgejo.jobs.check.steps[0].run];
    for (const line of lines) expect(line).not.toContain(expression('').slice(0, 3));
    const named = lines.flatMap((line) => [...line.matchAll(/npm run (\S+)/g)].map(([, name]) => name));
    expect(named).toEqual(['review', 'check', 'review', 'check']);
    for (const name of named) expect(scripts).toContain(name);
  });
});

describe('the search for faults finds', () => {
  it.each([
    [
      'an event that lends secrets',
      '  pull_request:',
      '  pull_request_target:',
      'runs on pull_request_target',
    ],
    ['a token for everything', 'permissions: {}', 'permissions: write-all', 'has a token for all jobs'],
    ['a token that writes', 'contents: read', 'contents: write', 'job check has contents: write'],
    ['a job without an end', '    timeout-minutes: 20\n', '', 'job check has no short timeout'],
    ['a moving tag', /setup-node@[0-9a-f]{40}/, 'setup-node@v5', 'actions/setup-node@v5 is not pinned'],
    ['credentials left', 'persist-credentials: false', 'fetch-depth: 1', 'leaves credentials on disk'],
    [
      'all of the head',
      '          sparse-checkout: /content/\n',
      '',
      'fetches more than content from the contributor',
    ],
    [
      'what a contributor wrote in a shell line',
      'run: npm ci',
      `run: echo ${expression('github.head_ref')}`,
      `expands an expression in a shell line: echo ${expression('github.head_ref')}`,
    ],
    [
      'a script of the head',
      'working-directory: base\n        run: npm ci',
      'working-directory: head\n        run: npm ci',
      'may run what the contributor sent: npm ci',
    ],
    ['a command that is not there', 'npm run check', 'npm run chekc', 'there is no npm run chekc'],
    ['a secret', 'node-version: 24', `node-version: ${expression('secrets.ANY')}`, 'uses a secret'],
  ])('%s', (_, safe, unsafe, fault) => {
    const changed = check.replace(safe, unsafe);
    expect(changed).not.toBe(check);
    expect(workflowFaults(changed, scripts)).toEqual([fault]);
  });
});
