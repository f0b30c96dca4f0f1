import { assemble } from '../../../src/almanac/assemble.ts';
import type { HandedIn } from '../../../src/almanac/review/history.ts';
import type { Review } from '../../../src/almanac/review/review.ts';
import { reviewOf } from '../../../src/almanac/review/review-of.ts';
import type { Side } from '../../../src/almanac/review/side.ts';
import { sealFlights } from '../../../src/almanac/seal-flights.ts';
import { contentOf, type Files, soundFolder } from '../../entries/content-folder.ts';

export const today = '2027-06-01';
const unknown: HandedIn = { on: null, author: null, files: null, byOthers: [], outside: [] };

/** What files say when they are laid over a small sound folder; the text itself serves as the digest. */
export async function sideOf(files: Files): Promise<Side> {
  const content = await contentOf(files);
  const digests = new Map(
    Object.entries({ ...soundFolder, ...files }).map(([file, text]) => [file, String(text)]),
  );
  return { content, almanac: assemble(content, `${today}T00:00:00Z`, sealFlights), digests };
}

/** The review of a change from some files to others. */
export async function reviewBetween(
  before: Files,
  after: Files,
  handedIn: Partial<HandedIn> = {},
): Promise<Review> {
  return reviewOf({ before: await sideOf(before), after: await sideOf(after) }, { ...unknown, ...handedIn });
}
