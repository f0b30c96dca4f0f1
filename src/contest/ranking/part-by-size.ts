/** A measured value with its standard uncertainty; null where it is absent. */
export type Measured = { readonly value: number; readonly u: number } | null;

/**
 * Parts items by a measured value, the preferred class first. Sorted by size, neighbours are parted where they differ by
 * more than 2√(u₁² + u₂²); an unbroken chain of neighbours stays in one class. Items without the value come last.
 */
export function partBySize<T>(
  items: readonly T[],
  measure: (item: T) => Measured,
  prefers: 'larger' | 'smaller',
): readonly (readonly T[])[] {
  const known: { item: T; value: number; u: number }[] = [];
  const absent: T[] = [];
  for (const item of items) {
    const measured = measure(item);
    if (measured === null) absent.push(item);
    else known.push({ item, ...measured });
  }
  // Of equal values the surer one comes first, so that the classes do not hang on the order of the items.
  known.sort((a, b) => a.value - b.value || a.u - b.u);
  const classes: T[][] = [];
  known.forEach(({ item, value, u }, index) => {
    const before = known[index - 1];
    const chained = before !== undefined && value - before.value <= 2 * Math.hypot(u, before.u);
    if (chained) classes.at(-1)?.push(item);
    else classes.push([item]);
  });
  if (prefers === 'larger') classes.reverse();
  return absent.length === 0 ? classes : [...classes, absent];
}
