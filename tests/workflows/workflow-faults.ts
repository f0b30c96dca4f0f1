import { parse } from 'yaml';

interface Step {
  readonly uses?: string;
  readonly run?: string;
  readonly with?: Readonly<Record<string, unknown>>;
  readonly 'working-directory'?: string;
}

interface Job {
  readonly permissions?: Readonly<Record<string, string>>;
  readonly 'timeout-minutes'?: number;
  readonly steps: readonly Step[];
}

interface Workflow {
  readonly on: Readonly<Record<string, unknown>>;
  readonly permissions?: unknown;
  readonly concurrency?: unknown;
  readonly jobs: Readonly<Record<string, Job>>;
}

/** What each job may be allowed at most. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  build: ['contents: read'],
  check: ['contents: read'],
  deploy: ['id-token: write', 'pages: write'],
};

/**
 * What is unsafe in a workflow, one sentence each. The rules are those commonly given for workflows that meet foreign
 * code (common practice, no source): no event that lends secrets to it, the least token, actions pinned by commit, no
 * expression in a shell line, no credentials left on disk, none of the contributor's scripts run.
 *
 * @param text the YAML of the workflow
 * @param scripts the names npm can run
 */
export function workflowFaults(text: string, scripts: readonly string[]): string[] {
  const workflow = parse(text) as Workflow;
  const jobs = Object.entries(workflow.jobs);
  const steps = jobs.flatMap(([, job]) => job.steps);
  return [
    ...['pull_request_target', 'workflow_run', 'issue_comment']
      .filter((event) => event in workflow.on)
      .map((event) => `runs on ${event}`),
    ...(JSON.stringify(workflow.permissions) === '{}' ? [] : ['has a token for all jobs']),
    ...(workflow.concurrency === undefined ? ['may overlap with itself'] : []),
    ...jobs.flatMap(([name, job]) => jobFaults(name, job)),
    ...steps.flatMap((step) => stepFaults(step, scripts)),
    ...(/\$\{\{[^}]*\bsecrets\b/.test(text) ? ['uses a secret'] : []),
  ];
}

function jobFaults(name: string, job: Job): string[] {
  const given = Object.entries(job.permissions ?? { all: 'by default' }).map(
    ([what, how]) => `${what}: ${how}`,
  );
  const limit = job['timeout-minutes'];
  return [
    ...given.filter((one) => !allowed[name]?.includes(one)).map((one) => `job ${name} has ${one}`),
    ...(limit === undefined || limit > 30 ? [`job ${name} has no short timeout`] : []),
  ];
}

function stepFaults(step: Step, scripts: readonly string[]): string[] {
  const run = step.run ?? '';
  const checkout = step.uses?.startsWith('actions/checkout@') ?? false;
  const unpinned = step.uses !== undefined && !/^[a-z-]+\/[a-z-]+@[0-9a-f]{40}$/.test(step.uses);
  const folder = step['working-directory'] ?? '.';
  return [
    ...(unpinned ? [`${step.uses} is not pinned`] : []),
    ...(checkout && step.with?.['persist-credentials'] !== false ? ['leaves credentials on disk'] : []),
    ...(checkout && step.with?.path === 'head' && step.with['sparse-checkout'] !== '/content/'
      ? ['fetches more than content from the contributor']
      : []),
    ...(run.includes('${{') ? [`expands an expression in a shell line: ${run}`] : []),
    ...(/^(?:\.\/)?head\b/.test(folder) || /\bcd\s|--prefix|(?<!npm )\bnpx?\s+(?!run |ci\b)/.test(run)
      ? [`may run what the contributor sent: ${run}`]
      : []),
    ...[...run.matchAll(/npm run (\S+)/g)]
      .map(([, script]) => script ?? '')
      .filter((script) => !scripts.includes(script))
      .map((script) => `there is no npm run ${script}`),
  ];
}
