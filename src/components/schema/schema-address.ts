import { link, schemaDataPath } from '../link.ts';

/** The whole address of a schema, where it is known on which host the site stands; else null. */
export function schemaAddress(kind: string, site: URL | undefined): string | null {
  return site === undefined ? null : new URL(link(schemaDataPath(kind)), site).href;
}
