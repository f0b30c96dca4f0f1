import type { Almanac } from '../almanac/almanac.ts';
import type { BuilderReference } from '../model/entry.ts';

/** How a builder appears on a page. */
export interface ShownBuilder {
  readonly handle: string;
  /** The name; the handle for a junior and for someone who gave no name. */
  readonly name: string;
  readonly club: string | null;
  /** False where no page of that builder exists. */
  readonly hasPage: boolean;
}

/** The builders of an entry as pages name them: a file of the builder's own wins, a junior appears by handle only. */
export function shownBuilders(almanac: Almanac, references: readonly BuilderReference[]): ShownBuilder[] {
  return references.map((reference) => {
    const record = almanac.builders.find((known) => known.builder.handle === reference.handle);
    const junior = record === undefined ? reference.junior : record.builder.junior || reference.junior;
    return {
      handle: reference.handle,
      name: junior ? reference.handle : (record?.builder.name ?? reference.name ?? reference.handle),
      club: junior ? null : (record?.builder.club ?? reference.club),
      hasPage: record !== undefined,
    };
  });
}
