import { cp, mkdir, open, rename, rm } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { codeOf, exists, reason, remove } from './move-folder.ts';
import { claim, placesBeside, release } from './swap-places.ts';

/** The steps of a swap, in order. Whatever happens between two of them, a whole site is there or can be restored. */
export const swapSteps = [
  'staged',
  'marked',
  'old-aside',
  'new-in-place',
  'unmarked',
  'old-removed',
] as const;
export type SwapStep = (typeof swapSteps)[number];

/** What a swap does apart from moving folders; a test stops it at a step. */
export interface SwapEffects {
  /** Called after each step is done. */
  readonly reached: (step: SwapStep) => Promise<void> | void;
}

/**
 * Puts a built site in the place of the one before it. The old site is moved aside, never deleted, before the new one
 * stands in its place; the marker, written before the first move, lets `restore` finish after a kill. Rejects
 * with the old site still in place where the system refuses a move.
 *
 * @param built absolute path of the new site, whole and checked; it is moved from there
 * @param out absolute path of the site's place
 */
export async function swap(built: string, out: string, effects: SwapEffects): Promise<void> {
  const { arriving, next, last, marker } = placesBeside(out);
  await mkdir(dirname(out), { recursive: true });
  await claim(out);
  await Promise.all([arriving, next, last].map(remove));
  await move(built, next, arriving);
  await effects.reached('staged');

  await writeMarker(marker, out);
  await effects.reached('marked');

  if (await exists(out)) {
    try {
      await rename(out, last);
    } catch (error) {
      await rm(marker, { force: true });
      await release(out);
      throw new Error(`The old site ${out} cannot be moved aside and stays in place: ${reason(error)}.`);
    }
  }
  await effects.reached('old-aside');

  try {
    await rename(next, out);
  } catch (error) {
    if (await exists(last)) await rename(last, out);
    await rm(marker, { force: true });
    await release(out);
    throw new Error(`The new site cannot be moved to ${out}, so the old one stays: ${reason(error)}.`);
  }
  await effects.reached('new-in-place');

  await rm(marker, { force: true });
  await effects.reached('unmarked');

  await remove(last);
  await release(out);
  await effects.reached('old-removed');
}

async function move(from: string, to: string, arriving: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if (codeOf(error) !== 'EXDEV') throw error;
    // Another file system: copied under a name that nobody takes for whole, then renamed.
    await cp(from, arriving, { recursive: true });
    await rename(arriving, to);
    await remove(from);
  }
}

async function writeMarker(marker: string, out: string): Promise<void> {
  const file = await open(`${marker}.${process.pid}`, 'w');
  try {
    await file.writeFile(`${JSON.stringify({ site: basename(out) })}\n`);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(`${marker}.${process.pid}`, marker);
}
