import { folderOf, nearestName } from '../folder/attachments.ts';
import { logsNamed, photosNamed, testLogsNamed } from '../folder/references.ts';
import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { FolderCheck } from './folder-check.ts';

export const unusedFile: FolderCheck = {
  code: 'unused-file',
  scope: 'entry',
  check({ there, site }) {
    const named = new Set<string>();
    // Of a folder whose own file could not be read nobody knows what it names.
    const unreadable: string[] = [];
    for (const [file, source] of there.sources) {
      const folder = file.slice(0, file.lastIndexOf('/') + 1);
      if (!/^(?:entries|rubber)\//.test(file)) continue;
      if (source === null) {
        unreadable.push(folder);
        continue;
      }
      const references = file.startsWith('entries/')
        ? [...photosNamed(source), ...logsNamed(source)]
        : [...testLogsNamed(source, 'stretch-tests'), ...testLogsNamed(source, 'torque-tests')];
      const beside = [...there.files]
        .filter((other) => folderOf(other) === folder)
        .map((other) => other.slice(folder.length));
      for (const reference of references) {
        if (reference === null) continue;
        named.add(folder + reference.name);
        // A misspelt name is told where it stands, and its file with it.
        if (!beside.includes(reference.name)) named.add(folder + nearestName(reference.name, beside)?.name);
      }
    }
    if (site?.value.logo != null) named.add(site.value.logo);
    return [...there.files].filter(mayBeNamed).flatMap((file): Problem[] => {
      const folder = file.slice(0, file.lastIndexOf('/') + 1);
      if (named.has(file) || unreadable.includes(folder) || (folder === '' && site === null)) return [];
      if (folder.startsWith('entries/') && !there.files.has(`${folder}entry.md`)) return [];
      const name = file.slice(folder.length);
      const owner = folder === '' ? 'site.md' : folder === 'rubber/' ? 'no batch of rubber' : 'entry.md';
      const who = owner === 'no batch of rubber' ? `${owner} names it` : `${owner} does not name it`;
      return [
        problemOf(file, 'unused-file', {
          message: `"${name}" is here, but ${who}, so it is not published: name it, or delete it.`,
          found: name,
        }),
      ];
    });
  },
};

function mayBeNamed(file: string): boolean {
  return /^(?:entries\/[^/]+\/[^/]+\/|rubber\/)[^/]+\.(?:jpe?g|png|webp|avif|csv)$|^[^/]+\.(?:jpe?g|png|webp|avif)$/i.test(
    file,
  );
}
