import { spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { projectFolder } from '../folders/project-folder.ts';

/** What one child process took. */
export interface Measured {
  /** From start to end, by the clock. */
  readonly seconds: number;
  /** Of all processors together; other programs on the machine hardly change it. */
  readonly processorSeconds: number;
  /** Largest resident memory, megabytes (of 1,000,000 bytes). */
  readonly megabytes: number;
}

/**
 * Runs a command or a module of scripts/ in a process of its own and measures it from start to end. The child says its processor
 * time and peak memory itself when it ends. Rejects where the child fails, with what it printed.
 */
export function measuredRun(script: string, args: readonly string[]): Promise<Measured> {
  const child = resolve(projectFolder, 'scripts/speed/measured-child.ts');
  return new Promise((done, failed) => {
    const started = performance.now();
    const running = spawn(process.execPath, [child, script, ...args], {
      cwd: projectFolder,
      stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
    });
    let printed = '';
    let used: Pick<NodeJS.ResourceUsage, 'userCPUTime' | 'systemCPUTime' | 'maxRSS'> | null = null;
    running.stdout?.on('data', (text) => {
      printed = `${printed}${text}`.slice(-4000);
    });
    running.stderr?.on('data', (text) => {
      printed = `${printed}${text}`.slice(-4000);
    });
    running.on('message', (usage) => {
      // The child sends nothing else.
      used = usage as NodeJS.ResourceUsage;
    });
    running.on('error', failed);
    running.on('close', (code) => {
      const seconds = (performance.now() - started) / 1000;
      if (code === 0 && used !== null)
        done({
          seconds,
          processorSeconds: (used.userCPUTime + used.systemCPUTime) / 1e6,
          megabytes: (used.maxRSS * 1024) / 1e6,
        });
      else failed(new Error(`${script} ${args.join(' ')} ended with code ${code}:\n${printed}`));
    });
  });
}
