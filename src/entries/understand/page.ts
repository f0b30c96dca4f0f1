import type { ClubPage } from '../../model/site.ts';
import type { Problem } from '../problems/problem.ts';
import { page as schema } from '../schema/page.ts';
import type { SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';

/** What a page of the club's own means. Null where anything is wrong with its fields. */
export function understandPage(
  source: SourceDocument,
  { id }: { readonly id: string },
): { readonly page: ClubPage | null; readonly problems: readonly Problem[] } {
  const { complete, problems } = readFields(source, schema);
  if (complete === null) return { page: null, problems };
  const { title, order, formerly } = complete;
  return {
    page: { id, title, order: order ?? null, formerly: formerly ?? [], body: source.body },
    problems,
  };
}
