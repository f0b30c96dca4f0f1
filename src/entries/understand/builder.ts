import type { Builder } from '../../model/site.ts';
import { juniorNamed } from '../check/junior-named.ts';
import { checkNamesReadable } from '../check/names-readable.ts';
import type { Problem } from '../problems/problem.ts';
import { builderFile as schema } from '../schema/builder.ts';
import type { SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';

/** What a builder's own file means. Null where anything is wrong with its fields. */
export function understandBuilder(
  source: SourceDocument,
  { handle }: { readonly handle: string },
): { readonly builder: Builder | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems } = readFields(source, schema);
  if (complete === null) return { builder: null, problems };
  const builder: Builder = {
    handle,
    name: complete.name ?? null,
    club: complete.club ?? null,
    junior: complete.junior ?? false,
    link: complete.link ?? null,
    formerly: complete.formerly ?? [],
    body: source.body,
  };
  return { builder, problems: [...problems, ...juniorNamed(draft, source), ...checkNamesReadable(source)] };
}
