import { createReadStream } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import type { AstroIntegration } from 'astro';
import type { Almanac } from '../src/almanac/almanac.ts';
import { handOver } from '../src/almanac/handover.ts';
import { readAlmanac } from '../src/almanac/read-almanac.ts';
import { encodePhoto } from '../src/publish/encode-photo.ts';
import { photoVariants } from '../src/publish/photo-variants.ts';
import { restore } from '../src/publish/restore.ts';
import { contentFolder } from './folders/content-folder.ts';
import { cacheFolder, projectFolder } from './folders/project-folder.ts';
import { buildInstant } from './site/build-instant.ts';
import { setEnvironment } from './site/render-site.ts';
import { siteAddress } from './site/site-address.ts';
import { checkSummary, summaryLine } from './terminal/check-summary.ts';
import { runCommand, UsageError } from './terminal/command-line.ts';
import { printProblems } from './terminal/print-problems.ts';

const help = `npm run dev -- [--content DIR] [--port N] [--host NAME] [--now ISO]

Shows the site at an address of this machine and reads the content again whenever a file of it changes.
Problems are printed and stop nothing.

  --content DIR  the content folder (default: content)
  --port N       the port (default: 4321, or the next free one)
  --host NAME    also listen on this address (default: this machine only)
  --now ISO      the moment to show the site for (else SOURCE_DATE_EPOCH, else the content folder's last commit)

Ends with Ctrl+C.`;

const command = {
  name: 'dev',
  help,
  options: { content: 'value', port: 'value', host: 'value', now: 'value' },
  takes: null,
} as const;

/** Serves the site while it is being written; ends when the server is stopped. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values) => {
    const content = contentFolder(values.content, command.name);
    const port = values.port === undefined ? 4321 : Number(values.port);
    if (!Number.isInteger(port) || port < 1 || port > 65_535)
      throw new UsageError(
        `The option --port takes a number from 1 to 65535, but "${values.port}" was given.`,
      );
    const now = await buildInstant(values.now, content, process.env);
    await restore(resolve(projectFolder, 'dist'));
    const current = { almanac: await read(content, now) };
    setEnvironment('development');
    process.chdir(projectFolder);
    const { dev } = await import('astro');
    const server = await dev({
      root: projectFolder,
      base: siteAddress(undefined, current.almanac.site.address).base,
      server: { port, ...(values.host === undefined ? {} : { host: values.host }) },
      integrations: [contentReload(content, now, current)],
    });
    await new Promise<void>((stop) => {
      process.once('SIGINT', stop);
      process.once('SIGTERM', stop);
    });
    await server.stop();
    return 0;
  });
}

async function read(content: string, now: string): Promise<Almanac> {
  const almanac = await readAlmanac({ content, now });
  handOver(almanac);
  printProblems(almanac.problems, content, process.stderr);
  const notes = almanac.problems.filter(({ severity }) => severity === 'note').length;
  process.stderr.write(
    `Read ${summaryLine(
      checkSummary(almanac, almanac.problems, () => true),
      notes,
    )}.\n`,
  );
  return almanac;
}

/** How long to wait after a change for the other files of the same save, in milliseconds. */
const settling = 100;

function contentReload(content: string, now: string, current: { almanac: Almanac }): AstroIntegration {
  return {
    name: 'content-reload',
    hooks: {
      'astro:server:setup': ({ server }) => {
        let waiting: NodeJS.Timeout | undefined;
        const readAgain = async () => {
          try {
            current.almanac = await read(content, now);
            server.environments.ssr.hot.send('astro:content-changed', {});
            server.environments.client.hot.send({ type: 'full-reload', path: '*' });
          } catch (error) {
            process.stderr.write(
              `The content cannot be read just now: ${error instanceof Error ? error.message : error}\n`,
            );
          }
        };
        server.watcher.add(content);
        server.watcher.on('all', (_, path) => {
          if (!resolve(path).startsWith(join(content, sep))) return;
          clearTimeout(waiting);
          waiting = setTimeout(readAgain, settling);
        });
        server.middlewares.use((request, response, next) => {
          const name = /\/photos\/([0-9a-f]+-\d+\.(?:webp|jpg))$/.exec(request.url ?? '')?.[1];
          const wanted = name === undefined ? null : photoNamed(current.almanac, name);
          if (wanted === null) return next();
          encodePhoto(join(content, wanted.source), wanted.variant, join(cacheFolder(), 'photos')).then(
            (file) => {
              response.setHeader(
                'Content-Type',
                wanted.variant.format === 'webp' ? 'image/webp' : 'image/jpeg',
              );
              createReadStream(file).pipe(response);
            },
            (error: unknown) => next(error),
          );
        });
      },
    },
  };
}

function photoNamed(almanac: Almanac, name: string) {
  for (const { entries } of almanac.challenges)
    for (const { photos } of entries)
      for (const photo of photos)
        for (const variant of photoVariants(photo))
          if (variant.path.endsWith(`/${name}`)) return { source: photo.source, variant };
  return null;
}
