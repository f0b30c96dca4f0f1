import type { NewsPost } from '../../model/site.ts';
import { checkNameOfNews } from '../check/name-of-news.ts';
import type { Problem } from '../problems/problem.ts';
import { news as schema } from '../schema/news.ts';
import type { SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';

/** What an announcement means; its id is the file's name, `<date>-<slug>`. Null where anything is wrong with it. */
export function understandNews(
  source: SourceDocument,
  { id }: { readonly id: string },
): { readonly post: NewsPost | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems } = readFields(source, schema);
  const all = [...problems, ...checkNameOfNews(draft, source, id)];
  if (complete === null || all.some(({ severity }) => severity === 'error'))
    return { post: null, problems: all };
  const post: NewsPost = {
    id,
    date: complete.date,
    title: complete.title,
    challenge: complete.challenge ?? null,
    summary: complete.summary ?? null,
    formerly: complete.formerly ?? [],
    body: source.body,
  };
  return { post, problems: all };
}
