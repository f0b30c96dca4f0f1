import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { workflowFaults } from './workflow-faults.ts';

const root = resolve(import.meta.dirname, '../..');
const seeds = resolve(root, 'scripts/new/site/seeds');
const read = (...path: readonly string[]) => readFileSync(resolve(...path), 'utf8');
const scripts = Object.keys(JSON.parse(read(root, 'package.json')).scripts);
const workflows = ['check.yml', 'publish.yml'];
const ours = (file: string) => parse(read(root, '.github/workflows', file));
const github = (file: string) => read(seeds, 'github/.github/workflows', file);
const forgejo = (file: string) => parse(read(seeds, 'forgejo/.forgejo/workflows', file));

interface Step {
  readonly name: string;
  readonly run?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly 'working-directory'?: string;
}

/** A step of a club as it would be if its generator were the repository itself, as it is here. */
function asOurs(step: Step): Step {
  const { 'working-directory': folder, ...others } = step;
  const here = folder?.replace(/\/?generator$/, '') ?? '';
  const run = others.run
    ?.replaceAll('--base-content ../content', '--base-content content')
    .replaceAll('--content ../content ', '')
    .replaceAll('../../', '../');
  return {
    ...others,
    ...(run === undefined ? {} : { run }),
    ...(here === '' ? {} : { 'working-directory': here }),
  };
}

const installs = 'Install the tools';
const fetches = 'Fetch and install the generator';

describe('the workflows of a club on GitHub', () => {
  it('are the same as those of this repository', () => {
    expect(readdirSync(resolve(seeds, 'github/.github/workflows'))).toEqual(workflows);
    expect(readdirSync(resolve(root, '.github/workflows'))).toEqual(workflows);
  });

  it.each(workflows)('%s is safe to run on what strangers send', (file) => {
    expect(workflowFaults(github(file), scripts)).toEqual([]);
  });

  it.each(workflows)(
    '%s differs from ours in where the generator comes from, and in nothing else',
    (file) => {
      const club = parse(github(file));
      const own = ours(file);
      const [job] = Object.keys(own.jobs);
      const steps = (of: typeof own): Step[] => of.jobs[job ?? ''].steps;
      const [fetched, ...ofClub] = steps(club);
      const [tools, ...ofOurs] = steps(own);
      expect({ ...fetched, name: '' }).toEqual({ ...tools, name: '' });
      const generator = ofClub.findIndex(({ name }) => name === fetches);
      expect(generator).toBe(ofOurs.findIndex(({ name }) => name === installs));
      const but = (list: Step[]) => list.filter((_, index) => index !== generator);
      expect(but(ofClub).map(asOurs)).toEqual(but(ofOurs));
      const frame = (of: typeof own) => ({
        ...of,
        jobs: { ...of.jobs, [job ?? '']: { ...of.jobs[job ?? ''], steps: [] } },
      });
      expect(frame(club)).toEqual(frame(own));
    },
  );

  it('take the generator that the branch names, never the one a pull request names', () => {
    const run = (file: string, job: string) =>
      parse(github(file)).jobs[job].steps.find(({ name }: Step) => name === fetches).run;
    expect(run('check.yml', 'check')).toBe('sh base/generator.sh');
    expect(run('publish.yml', 'build')).toBe('sh generator.sh');
  });

  it('pin each action to the commit that ours name', () => {
    const pins = (text: string) => [...text.matchAll(/uses: (.*)/g)].map(([, pin]) => pin);
    for (const file of workflows)
      expect(pins(github(file))).toEqual(pins(read(root, '.github/workflows', file)));
  });
});

/** What is unsafe in a shell line that meets foreign content, whatever the forge (common practice, no source). */
function lineFaults(line: string): string[] {
  return [
    ...(line.includes('${{') ? [`expands an expression: ${line}`] : []),
    ...(/\b(?:cd|--prefix|sh|working-directory:?) \S*\bhead\b/.test(line)
      ? [`runs what was sent: ${line}`]
      : []),
    ...[...line.matchAll(/npm run (\S+)/g)]
      .filter(([, name]) => !scripts.includes(name ?? ''))
      .map(([, name]) => `there is no npm run ${name}`),
    ...(/secrets\b/.test(line) ? [`uses a secret: ${line}`] : []),
  ];
}

describe('the workflows of a club on Forgejo', () => {
  const steps = (file: string): Step[] => {
    const [job] = Object.values(forgejo(file).jobs) as [{ steps: Step[] }];
    return job.steps;
  };

  it.each(workflows)('%s is safe to run on what strangers send', (file) => {
    expect(steps(file).flatMap(({ run = '' }) => lineFaults(run))).toEqual([]);
    for (const { 'working-directory': folder = '' } of steps(file)) expect(folder).not.toMatch(/^head/);
    for (const job of Object.values(forgejo(file).jobs) as { 'timeout-minutes': number }[])
      expect(job['timeout-minutes']).toBeLessThanOrEqual(30);
    expect(JSON.stringify(forgejo(file))).not.toMatch(/pull_request_target|secrets\./);
  });

  it('lend the token to the step that publishes, and to no other', () => {
    const lent = workflows.flatMap((file) =>
      steps(file).filter(({ env }) => JSON.stringify(env ?? {}).includes('token')),
    );
    expect(lent.map(({ name }) => name)).toEqual(['Put the site in place']);
    expect(JSON.stringify(forgejo('check.yml'))).not.toContain('token');
  });

  it('fetch of a pull request the content alone', () => {
    const fetch = steps('check.yml').find(({ name }) => name === 'Fetch the content handed in')?.run;
    expect(fetch).toContain('sparse-checkout set --no-cone /content/');
  });

  it('check with the lines of those on GitHub', () => {
    const runs = (all: readonly Step[]) =>
      all.flatMap(({ run = '', name }) =>
        /^(?:Build|Fetch and install|Note)/.test(name) ? [{ name, run }] : [],
      );
    expect(runs(steps('check.yml'))).toEqual(runs(parse(github('check.yml')).jobs.check.steps));
  });
});

describe('the pipeline of a club on GitLab', () => {
  const pipeline = parse(read(seeds, 'gitlab/.gitlab-ci.yml'));
  const lines: string[] = [...pipeline.check.script, ...pipeline.pages.script];

  it('is safe to run on what strangers send', () => {
    expect(lines.flatMap(lineFaults)).toEqual([]);
    for (const { timeout } of [pipeline.check, pipeline.pages]) expect(timeout).toMatch(/^[123]0 minutes$/);
  });

  it('checks with the generator that the target branch names', () => {
    const script: string[] = pipeline.check.script;
    expect(script.find((line) => line.startsWith('sh '))).toBe('sh /tmp/base/generator.sh');
    expect(script.find((line) => line.startsWith('cd '))).toBe('cd /tmp/base/generator');
    expect(script.findIndex((line) => line.startsWith('git worktree'))).toBeLessThan(
      script.findIndex((line) => line.startsWith('sh ')),
    );
  });

  it('publishes what the default branch holds, one at a time, and never what a request holds', () => {
    expect(pipeline.check.rules).toEqual([{ if: '$CI_PIPELINE_SOURCE == "merge_request_event"' }]);
    expect(pipeline.pages.rules).toEqual([
      { if: '$CI_PIPELINE_SOURCE != "merge_request_event" && $CI_COMMIT_BRANCH == $CI_DEFAULT_BRANCH' },
    ]);
    expect(pipeline.pages.resource_group).toBe('pages');
    expect(pipeline.pages.artifacts.paths).toEqual(['public']);
  });
});

describe('the address of the published site', () => {
  it('is read from site.md by the same line on every forge', () => {
    const texts = [
      read(root, '.github/workflows/publish.yml'),
      github('publish.yml'),
      read(seeds, 'gitlab/.gitlab-ci.yml'),
      read(seeds, 'forgejo/.forgejo/workflows/publish.yml'),
    ];
    const found = texts.map((text) =>
      /address="\$\(sed .*\)"/.exec(text)?.[0].replace('club/content', 'content'),
    );
    expect(found[0]).toContain('content/site.md');
    expect(new Set(found).size).toBe(1);
  });
});

describe('the search for faults of lines finds', () => {
  it.each([
    ['an expression', 'echo ${' + '{ github.head_ref }}', 'expands an expression'],
    ['a script of the head', 'sh head/generator.sh', 'runs what was sent'],
    ['a folder of the head', 'cd head && npm ci', 'runs what was sent'],
    ['a command that is not there', 'npm run chekc', 'there is no npm run chekc'],
    ['a secret', 'echo "$secrets"', 'uses a secret'],
  ])('%s', (_, line, fault) => {
    expect(lineFaults(line)).toEqual([expect.stringContaining(fault)]);
  });
});
