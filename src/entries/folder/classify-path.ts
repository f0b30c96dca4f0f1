/** What a path below the content folder is for. */
export type Place =
  | { readonly kind: 'site' | 'asset' | 'unexpected' }
  | { readonly kind: 'page' | 'builder' | 'challenge' | 'batch' | 'news' | 'result'; readonly id: string }
  | { readonly kind: 'entry' | 'ruling'; readonly challenge: string; readonly id: string }
  | { readonly kind: 'entry-asset'; readonly challenge: string; readonly id: string; readonly name: string }
  | { readonly kind: 'batch-asset'; readonly name: string };

const picture = /\.(?:jpe?g|png|webp|avif)$/i;
const log = /\.csv$/i;
const oneEach = {
  pages: ['page', '.md'],
  builders: ['builder', '.md'],
  challenges: ['challenge', '.md'],
  rubber: ['batch', '.md'],
  news: ['news', '.md'],
  results: ['result', '.json'],
} as const;

/** Says by its path alone, with `/`, what a file is for; its name may still be refused (`slug-rules.ts`). */
export function classifyPath(path: string): Place {
  const parts = path.split('/');
  const [first = '', second = '', third = '', fourth = ''] = parts;
  const unexpected: Place = { kind: 'unexpected' };
  if (parts.length === 1) {
    if (first === 'site.md') return { kind: 'site' };
    return picture.test(first) ? { kind: 'asset' } : unexpected;
  }
  if (parts.length === 2) {
    if (first === 'rubber' && log.test(second)) return { kind: 'batch-asset', name: second };
    if (!Object.hasOwn(oneEach, first)) return unexpected;
    const [kind, extension] = oneEach[first as keyof typeof oneEach];
    return second.endsWith(extension) ? { kind, id: second.slice(0, -extension.length) } : unexpected;
  }
  if (parts.length === 3 && first === 'rulings' && third.endsWith('.md'))
    return { kind: 'ruling', challenge: second, id: third.slice(0, -'.md'.length) };
  if (parts.length !== 4 || first !== 'entries') return unexpected;
  if (fourth === 'entry.md') return { kind: 'entry', challenge: second, id: third };
  const asset = picture.test(fourth) || log.test(fourth);
  return asset ? { kind: 'entry-asset', challenge: second, id: third, name: fourth } : unexpected;
}
