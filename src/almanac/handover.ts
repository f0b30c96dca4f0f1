import type { Almanac } from './almanac.ts';

// Pages are bundled by the site generator and then run in the same process as the command that read the content.
// A registered symbol is the one place both sides see, whatever the bundler does with modules: so content is read
// once per build, and `dev` can replace the almanac when a file changes.
const key = Symbol.for('last-turn.almanac');
const shelf = globalThis as unknown as Record<symbol, Almanac | undefined>;

/** Gives the pages the almanac they are to show. Called by commands only. */
export function handOver(almanac: Almanac): void {
  shelf[key] = almanac;
}

/** The almanac of this build. Throws where no command has handed one over: pages never read content themselves. */
export function currentAlmanac(): Almanac {
  const almanac = shelf[key];
  if (almanac === undefined)
    throw new Error('No almanac was handed over: start the site with `npm run build` or `npm run dev`.');
  return almanac;
}
