import type { Entry } from '../../model/entry.ts';

/** A team is junior when all of it are. */
export function isJunior({ builders }: Pick<Entry, 'builders'>): boolean {
  return builders.every(({ junior }) => junior);
}
