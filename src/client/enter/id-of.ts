import type { Path } from '../../entries/source/source.ts';

/** The id of what shows a field of the text, unique on the page. */
export function idOf(path: Path, part = ''): string {
  return `at-${[...path, ...(part === '' ? [] : [`-${part}`])].map((step) => encodeURIComponent(step)).join('.')}`;
}
