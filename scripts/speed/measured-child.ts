// Runs the `main` of one of the scripts above it and tells the parent process what it took: processor time and memory.
import { keepCompiled } from '../compile-cache.mjs';

keepCompiled();
const [script = '', ...args] = process.argv.slice(2);
const { main } = await import(new URL(`../${script}.ts`, import.meta.url).href);
process.exitCode = await main(args);
process.send?.(process.resourceUsage());
process.disconnect?.();
