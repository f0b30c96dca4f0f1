import { runCommand } from './terminal/command-line.ts';
import { runTool } from './terminal/run-tool.ts';

const command = {
  name: 'lint',
  help: 'npm run lint\n\nSays what the linter and the formatters would change, and changes nothing.\n\nExit code: 0 nothing to change, 1 something.',
  options: {},
  takes: null,
} as const;

/** Runs linter and formatters without changing a file; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async () => {
    const code = await runTool('biome', ['check', '--error-on-warnings']);
    const pages = await runTool('prettier', ['--check', '--log-level', 'warn', 'src/**/*.astro']);
    return code === 0 && pages === 0 ? 0 : 1;
  });
}
