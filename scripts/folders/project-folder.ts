import { resolve } from 'node:path';

/** The folder of this project: package.json, src, and by default the content and the built site. */
export const projectFolder = resolve(import.meta.dirname, '../..');

/** Where cached pictures and builds under way are kept; LAST_TURN_CACHE names another place for the pictures. */
export function cacheFolder(): string {
  const given = process.env.LAST_TURN_CACHE;
  return given === undefined || given === ''
    ? resolve(projectFolder, 'node_modules/.cache/last-turn')
    : resolve(given);
}

/**
 * An absolute path from what was typed. npm runs commands in the project's folder, whatever folder they were typed in;
 * a relative path means the folder the person was in.
 *
 * @param command the npm script that is running: only then does npm's own record of that folder hold for it
 */
export function typedPath(path: string, command: string): string {
  const typedIn = process.env.npm_lifecycle_event === command ? process.env.INIT_CWD : undefined;
  return resolve(typedIn ?? process.cwd(), path);
}
