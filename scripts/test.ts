import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { counted } from './terminal/check-summary.ts';
import { runCommand } from './terminal/command-line.ts';
import { runTool } from './terminal/run-tool.ts';

const help = `npm test [-- paths…]

Runs every check of the project, one after another: linter, formatters, types, types of the pages, tests.
With paths, only the tests of those files or folders run (and all of the checks before them).

Exit code: 0 all passed, 1 something failed.`;

const command = { name: 'test', help, options: {}, takes: '[paths…]' } as const;

/** Runs all checks, all of them even where one fails; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (_, paths) => {
    const outcomes: { readonly name: string; readonly passed: boolean }[] = [];
    const step = async (name: string, run: () => Promise<number>) => {
      process.stdout.write(`\n${name}\n`);
      outcomes.push({ name, passed: (await run()) === 0 });
    };
    await step('Linter', () => runTool('biome', ['check', '--error-on-warnings']));
    await step('Format of pages', () =>
      runTool('prettier', ['--check', '--log-level', 'warn', 'src/**/*.astro']),
    );
    // First, for it writes the types that the next one reads.
    await step('Types of pages', () => runTool('astro', ['check', '--minimumSeverity', 'warning']));
    await step('Types', () => runTool('tsc', ['-p', '.', '--noEmit']));

    const folder = await mkdtemp(join(tmpdir(), 'last-turn-test-'));
    const report = join(folder, 'report.json');
    await step('Tests', () =>
      runTool('vitest', [
        'run',
        '--config',
        'tests/vitest.config.ts',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        ...paths,
      ]),
    );
    const { passed, failed } = counts(await readFile(report, 'utf8').catch(() => null));
    await rm(folder, { recursive: true, force: true });

    process.stdout.write('\n');
    for (const outcome of outcomes)
      process.stdout.write(`${outcome.passed ? 'passed' : 'FAILED'}  ${outcome.name}\n`);
    const wrong = outcomes.filter((outcome) => !outcome.passed).length;
    process.stdout.write(
      wrong === 0
        ? 'All checks passed.\n'
        : `${counted(wrong, 'check', 'checks')} of ${outcomes.length} failed.\n`,
    );
    process.stdout.write(`${passed} passed, ${failed} failed\n`);
    return wrong === 0 ? 0 : 1;
  });
}

/** Counts of single tests; a file that could not even be loaded counts as one failure. */
function counts(report: string | null): { readonly passed: number; readonly failed: number } {
  const data: unknown = report === null ? null : JSON.parse(report);
  if (typeof data !== 'object' || data === null) return { passed: 0, failed: 1 };
  const number = (key: string) => {
    const value: unknown = Object.hasOwn(data, key) ? Reflect.get(data, key) : 0;
    return typeof value === 'number' ? value : 0;
  };
  const results: unknown = Reflect.get(data, 'testResults');
  const unloaded = Array.isArray(results)
    ? results.filter((file) => file.status === 'failed' && file.assertionResults.length === 0).length
    : 0;
  return { passed: number('numPassedTests'), failed: number('numFailedTests') + unloaded };
}
