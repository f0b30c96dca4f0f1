import type { Sheet } from './sheet.ts';
import { escaped } from './svg-text.ts';

/** What a drawing is called, for those who cannot see it. */
export interface DrawingNames {
  /** Unique on its page; drawings on several kinds of paper may share it. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

/** A whole drawing as SVG text, with title and description. */
export function drawingSvg(
  { width, height, paper }: Sheet,
  { id, title, description }: DrawingNames,
  parts: readonly string[],
): string {
  const own = escaped(`${id}-${paper.name}`);
  const names = `<title id="${own}-title">${escaped(title)}</title><desc id="${own}-description">${escaped(description)}</desc>`;
  return `<svg class="drawing ${paper.name}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${own}-title ${own}-description">${names}${parts.join('')}</svg>`;
}
