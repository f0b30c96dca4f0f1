/** Who changed a file of the content folder, from its history. */
export interface FileHistory {
  readonly file: string;
  /** Order in which the files came in: the place of the first commit among all. */
  readonly first: number;
  /** Everybody who changed it, by whatever names them in the history. */
  readonly authors: ReadonlySet<string>;
}

/** An entry that names a handle which until then only other people had written. */
export interface HandleByOthers {
  readonly file: string;
  readonly handle: string;
  /** The earlier files that speak of the same handle. */
  readonly earlier: readonly string[];
}

/**
 * Entries that name a handle whose earlier files all came from other authors. There are good reasons for that, such as an
 * organiser who writes entries for others; it is something to ask about, no more.
 *
 * @param naming the files that speak of each handle: entries, and its own file
 */
export function handlesByOthers(
  naming: readonly { readonly file: string; readonly handle: string }[],
  history: readonly FileHistory[],
): readonly HandleByOthers[] {
  const known = new Map(history.map((one) => [one.file, one]));
  return naming.flatMap(({ file, handle }) => {
    const own = known.get(file);
    if (own === undefined) return [];
    const earlier = naming
      .filter((other) => other.handle === handle && other.file !== file)
      .flatMap((other) => known.get(other.file) ?? [])
      .filter(({ first }) => first < own.first);
    const shared = earlier.some(({ authors }) => [...authors].some((author) => own.authors.has(author)));
    return earlier.length === 0 || shared ? [] : [{ file, handle, earlier: earlier.map((one) => one.file) }];
  });
}
