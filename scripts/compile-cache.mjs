import * as module from 'node:module';
import { fileURLToPath } from 'node:url';

/**
 * Keeps compiled code between runs, types already stripped: a command starts in half the time. A Node too old for it
 * goes without.
 */
export function keepCompiled() {
  module.enableCompileCache?.(
    fileURLToPath(new URL('../node_modules/.cache/last-turn/compiled', import.meta.url)),
  );
}
