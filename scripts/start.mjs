// Starts one of the project's commands on a Node that can run it. Kept in plain JavaScript, so that an older
// Node can read it far enough to say in one sentence what is missing.
import { existsSync } from 'node:fs';
import { keepCompiled } from './compile-cache.mjs';

const needed = 24;
const [name, ...rest] = process.argv.slice(2);
const found = Number(process.versions.node.split('.')[0]);

if (found < needed) {
  console.error(
    `Last Turn needs Node ${needed} or newer and found ${process.versions.node}. ` +
      'Its own copy comes with `npm ci` where one is published for this kind of machine; ' +
      `here there is none, so please install Node ${needed} and run the command again.`,
  );
  process.exit(1);
}

const script = name === undefined ? undefined : new URL(`./${name}.ts`, import.meta.url);
if (script === undefined || !/^[a-z-]+$/.test(name) || !existsSync(script)) {
  console.error(`There is no command \`${name ?? ''}\`; \`npm run\` lists them.`);
  process.exit(2);
}

keepCompiled();
// Who reads the beginning and closes the pipe has seen enough.
process.stdout.on('error', (error) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});

const { main } = await import(script.href);
process.exitCode = await main(rest);
