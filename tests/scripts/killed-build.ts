// Builds a site and is killed, as by the system, once the step of the swap named first is reached. The other arguments
// are those of the build.
import { main } from '../../scripts/build.ts';

const [step = '', ...args] = process.argv.slice(2);
await main(args, {
  reached: (name) => {
    if (name === step) process.kill(process.pid, 'SIGKILL');
  },
});
