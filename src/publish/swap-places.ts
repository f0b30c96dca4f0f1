import { readFile, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { codeOf } from './move-folder.ts';

/**
 * What a swap puts beside the site, here for a site `dist`: `.dist.arriving`, a copy that may be half done;
 * `.dist.next`, the new site, whole; `.dist.last`, the old one; `.dist.swap`, the marker of a swap under way;
 * `.dist.owner`, who does it.
 */
export function placesBeside(out: string) {
  const beside = (ending: string) => join(dirname(out), `.${basename(out)}.${ending}`);
  return {
    arriving: beside('arriving'),
    next: beside('next'),
    last: beside('last'),
    marker: beside('swap'),
    owner: beside('owner'),
  };
}

/** A swap takes milliseconds, a copy to another disk some seconds: an older claim is one of a killed process. */
const claimLasts = 300_000;

/** Makes this process the one that may move folders beside the site. Rejects while another one is at it. */
export async function claim(out: string): Promise<void> {
  const { owner } = placesBeside(out);
  if (await isClaimedByAnother(out))
    throw new Error(
      `Another build is putting its site at ${out} just now. Wait for it, or remove ${owner} if there is none.`,
    );
  await rm(owner, { force: true });
  try {
    await writeFile(owner, String(process.pid), { flag: 'wx' });
  } catch (error) {
    if (codeOf(error) === 'EEXIST') throw new Error(`Another build is putting its site at ${out} just now.`);
    throw error;
  }
}

/** Gives up what {@link claim} took. */
export async function release(out: string): Promise<void> {
  await rm(placesBeside(out).owner, { force: true });
}

/** True while another living process moves folders beside the site. */
export async function isClaimedByAnother(out: string): Promise<boolean> {
  const { owner } = placesBeside(out);
  const [text, found] = await Promise.all([readFile(owner, 'utf8'), stat(owner)]).catch(() => [null, null]);
  const pid = Number(text);
  if (text === null || found === null || !Number.isInteger(pid) || pid <= 0 || pid === process.pid)
    return false;
  return Date.now() - found.mtimeMs < claimLasts && isAlive(pid);
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === 'EPERM';
  }
}
