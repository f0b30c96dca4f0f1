import type { Site } from '../../model/site.ts';
import type { Problem } from '../problems/problem.ts';
import { site as schema } from '../schema/site.ts';
import type { SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';

/** What site.md means. Units not stated are metric, a branch not stated is main. Null where anything is wrong. */
export function understandSite(source: SourceDocument): {
  readonly site: Site | null;
  readonly problems: readonly Problem[];
} {
  const { complete, problems } = readFields(source, schema);
  if (complete === null) return { site: null, problems };
  const { repository } = complete;
  const site: Site = {
    format: 1,
    title: complete.title,
    club: complete.club ?? null,
    address: complete.address ?? null,
    repository:
      repository === undefined
        ? null
        : { kind: repository.kind, url: repository.url, branch: repository.branch ?? 'main' },
    sendTo: complete['send-to'] ?? null,
    units: complete.units ?? 'metric',
    featured: complete.featured ?? null,
    logo: complete.logo ?? null,
    accent: complete.accent ?? null,
    links: complete.links ?? [],
    licence: complete.licence ?? null,
    body: source.body,
  };
  return { site, problems };
}
