import { mkdir, rename, stat, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Makes a file of a cache unless it is there already. Rejects where it cannot be made; then nothing is written. */
export async function keepFile(file: string, make: () => Promise<Uint8Array>): Promise<void> {
  if (await isKept(file)) return;
  const bytes = await make();
  await mkdir(dirname(file), { recursive: true });
  // Written beside and renamed: a killed build leaves no half file for the next one to find.
  const beside = `${file}.${process.pid}`;
  await writeFile(beside, bytes);
  await rename(beside, file);
}

async function isKept(file: string): Promise<boolean> {
  return stat(file).then(
    (found) => found.size > 0,
    () => false,
  );
}
