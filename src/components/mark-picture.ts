import { skein } from './skein-path.ts';

/**
 * The mark on a ground of paper, as an SVG of its own.
 *
 * @param corner radius of the ground's corners, of a side of 32; 0 for a system that rounds them itself
 */
export function markPicture(corner: number): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="${corner}" fill="#fbfaf5"/><path transform="rotate(-32 16 16)" fill="none" stroke="#7c3210" stroke-width="2.75" stroke-linejoin="round" d="${skein}"/></svg>\n`;
}
