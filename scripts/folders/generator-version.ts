import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { projectFolder } from './project-folder.ts';

/** The version of this project, as its package.json has it: a frozen result names what froze it. */
export async function generatorVersion(): Promise<string> {
  const { version } = JSON.parse(await readFile(join(projectFolder, 'package.json'), 'utf8')) as {
    version: string;
  };
  return version;
}
