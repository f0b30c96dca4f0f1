import { runCommand } from './terminal/command-line.ts';
import { runTool } from './terminal/run-tool.ts';

const command = {
  name: 'format',
  help: 'npm run format\n\nFormats every file and makes the linter’s safe repairs.\n\nExit code: 0 all well, 1 where something needs a hand.',
  options: {},
  takes: null,
} as const;

/** Formats the project's own files; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async () => {
    const code = await runTool('biome', ['check', '--write']);
    const pages = await runTool('prettier', ['--write', '--log-level', 'warn', 'src/**/*.astro']);
    return code === 0 && pages === 0 ? 0 : 1;
  });
}
