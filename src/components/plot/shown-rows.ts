/** More rows than these nobody reads in a page, and a browser is slow with them; the data file holds every one. */
export const mostRows = 100;

/**
 * Which rows of a plot its table shows: all, or those that stand highest, in the plot's order.
 *
 * @param heights value of each row on the upright axis
 * @returns places of rows, from 0
 */
export function shownRows(heights: readonly number[]): readonly number[] {
  return heights
    .map((height, place) => ({ height, place }))
    .sort((a, b) => b.height - a.height || a.place - b.place)
    .slice(0, mostRows)
    .map(({ place }) => place)
    .sort((a, b) => a - b);
}
