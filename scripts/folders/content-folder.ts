import { existsSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { UsageError } from '../terminal/command-line.ts';
import { projectFolder, typedPath } from './project-folder.ts';

/**
 * The absolute path of the content folder: the one given, else the one that holds the first of the paths, else the
 * project's own. Throws a UsageError where there is no such folder.
 */
export function contentFolder(
  given: string | undefined,
  command: string,
  paths: readonly string[] = [],
): string {
  const folder =
    given !== undefined
      ? typedPath(given, command)
      : (folderAround(paths[0]) ?? resolve(projectFolder, 'content'));
  if (!isFolder(folder))
    throw new UsageError(
      `There is no content folder ${folder}. Name the folder that holds site.md and challenges/ with --content.`,
    );
  return folder;
}

/** The nearest folder above a path that looks like a content folder. */
function folderAround(path: string | undefined): string | null {
  for (let folder = path ?? '/'; folder !== dirname(folder); folder = dirname(folder))
    if (
      existsSync(join(folder, 'site.md')) ||
      (isFolder(join(folder, 'entries')) && isFolder(join(folder, 'challenges')))
    )
      return folder;
  return null;
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}
