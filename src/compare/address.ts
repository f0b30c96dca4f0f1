/** So many aircraft fit side by side. */
export const mostCompared = 4;

/** What an address asks to compare. */
export interface Choice {
  /** `<challenge>/<entry>` of aircraft that are there, each once, in their order, no more than fit. */
  readonly chosen: readonly string[];
  /** What it names that is not there. */
  readonly unknown: readonly string[];
  /** True where it names more than fit. */
  readonly tooMany: boolean;
}

/** Reads the part of an address behind the question mark, such as `?of=spring/heron,spring/bittern`. */
export function readChoice(query: string, known: ReadonlySet<string>): Choice {
  const named = new URLSearchParams(query)
    .getAll('of')
    .flatMap((list) => list.split(','))
    .map((id) => id.trim())
    .filter((id) => id !== '');
  const there = [...new Set(named.filter((id) => known.has(id)))];
  return {
    chosen: there.slice(0, mostCompared),
    unknown: [...new Set(named.filter((id) => !known.has(id)))],
    tooMany: there.length > mostCompared,
  };
}

/** The part of an address behind the path; empty for no aircraft. */
export function choiceQuery(chosen: readonly string[]): string {
  return chosen.length === 0 ? '' : `?of=${chosen.join(',')}`;
}
