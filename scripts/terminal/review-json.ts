import type { Review } from '../../src/almanac/review/review.ts';
import type { Figure } from '../../src/figures/figure.ts';
import { dataOfFigure } from '../../src/publish/figure-data.ts';

/** A review as data: the shape of `Review` with `format: 1`, its figures as in the data files. */
export function reviewJson(review: Review): string {
  const figure = (one: Figure | null) => (one === null ? null : dataOfFigure(one));
  const entries = review.entries.map((entry) => ({
    ...entry,
    attached: entry.attached.map(({ file, change }) => ({ file, change })),
    figures: entry.figures.map((moved) => ({
      ...moved,
      before: figure(moved.before),
      after: figure(moved.after),
    })),
  }));
  return `${JSON.stringify({ format: 1, ...review, entries }, null, 2)}\n`;
}
