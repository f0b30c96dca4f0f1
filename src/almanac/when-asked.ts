/** Makes something when it is first asked for, once: checking shows no page, and need not wait for what only pages show. */
export function whenAsked<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
