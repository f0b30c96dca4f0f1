import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';

/** Something that must stand once, at its place. */
export interface Named {
  readonly name: string;
  readonly path: Path;
}

/** Each item whose name stood before, with the first of that name. */
export function repeated(items: readonly Named[]): { readonly item: Named; readonly first: Named }[] {
  const firsts = new Map<string, Named>();
  return items.flatMap((item) => {
    const first = firsts.get(item.name);
    if (first !== undefined) return [{ item, first }];
    firsts.set(item.name, item);
    return [];
  });
}

/** The other end of a contradiction. */
export function relatedAt(source: SourceDocument, path: Path, message: string): Problem['related'] {
  return { ...locate(source, path, 'value'), message };
}
