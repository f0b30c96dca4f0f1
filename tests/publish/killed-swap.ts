// Swaps a site and is killed, as by the system, once the step named is reached. Arguments: built, out, step.
import { swap } from '../../src/publish/swap.ts';

const [built = '', out = '', step = ''] = process.argv.slice(2);
await swap(built, out, {
  reached: (name) => {
    if (name === step) process.kill(process.pid, 'SIGKILL');
  },
});
