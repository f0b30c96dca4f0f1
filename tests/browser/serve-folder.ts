import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
  '.woff2': 'font/woff2',
};

/** A folder served as any static host does, below a path; everything outside that path is not there. */
export interface ServedFolder {
  /** Such as `http://127.0.0.1:40123/club/trials/`. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves a folder on a free port of this machine only. */
export async function serveFolder(folder: string, base: string): Promise<ServedFolder> {
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const inside = path.startsWith(base) ? normalize(path.slice(base.length)) : '..';
    const found = inside.startsWith('..') ? null : await fileAt(join(folder, inside));
    const file = found ?? (await fileAt(join(folder, '404.html')));
    if (file === null) response.writeHead(404).end();
    else
      response
        .writeHead(found === null ? 404 : 200, {
          'content-type': types[extname(file)] ?? 'application/octet-stream',
        })
        .end(await readFile(file));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('The server has no port.');
  return {
    address: `http://127.0.0.1:${bound.port}${base}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function fileAt(path: string): Promise<string | null> {
  const known = await stat(path).catch(() => null);
  if (known === null) return null;
  return known.isDirectory() ? fileAt(join(path, 'index.html')) : path;
}
