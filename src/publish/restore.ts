import { rename } from 'node:fs/promises';
import { exists, remove } from './move-folder.ts';
import { isClaimedByAnother, placesBeside } from './swap-places.ts';

/** What {@link restore} found and did. */
export type Restored = 'nothing' | 'finished' | 'brought back' | 'cleaned';

/**
 * Finishes what a killed build left half done beside a site, or tidies up after it. Every command that starts calls
 * it first; it does nothing where no swap was under way.
 */
export async function restore(out: string): Promise<Restored> {
  const { arriving, next, last, marker, owner } = placesBeside(out);
  if (await isClaimedByAnother(out)) return 'nothing';
  if (!(await exists(marker))) {
    // Without a marker the site in place is the whole one, and anything beside it is a leftover.
    const leftovers = [];
    for (const folder of [arriving, next, last, owner]) if (await exists(folder)) leftovers.push(folder);
    if (leftovers.length === 0) return 'nothing';
    await Promise.all(leftovers.map(remove));
    return 'cleaned';
  }
  if (await exists(next)) {
    if (await exists(out)) {
      await remove(last);
      await rename(out, last);
    }
    await rename(next, out);
    await tidied(out);
    return 'finished';
  }
  if (!(await exists(out)) && (await exists(last))) {
    await rename(last, out);
    await tidied(out);
    return 'brought back';
  }
  await tidied(out);
  return 'finished';
}

/** The marker goes before the old site, so that a second kill never leaves a marker beside a half-removed site. */
async function tidied(out: string): Promise<void> {
  const { arriving, last, marker, owner } = placesBeside(out);
  await remove(marker);
  await Promise.all([arriving, last, owner].map(remove));
}
