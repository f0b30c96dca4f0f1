import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder } from '../folders/project-folder.ts';

/** The programs of installed packages that the project's own commands use. */
const programs = {
  astro: 'astro/bin/astro.mjs',
  biome: '@biomejs/biome/bin/biome',
  prettier: 'prettier/bin/prettier.cjs',
  tsc: 'typescript/bin/tsc',
  vitest: 'vitest/vitest.mjs',
} as const;

/**
 * Runs an installed program on this very Node, in the project's folder, its output shown as it comes. Gives its exit
 * code; 1 where it was killed. Rejects where it is not installed.
 */
export function runTool(program: keyof typeof programs, args: readonly string[]): Promise<number> {
  const file = join(projectFolder, 'node_modules', programs[program]);
  if (!existsSync(file))
    return Promise.reject(new Error(`${program} is not installed; run \`npm ci\` first.`));
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [file, ...args], {
      cwd: projectFolder,
      stdio: 'inherit',
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
    });
    child.on('error', failed);
    child.on('close', (code) => done(code ?? 1));
  });
}
