/**
 * The candidate nearest to a word; null where none is near. Near is at most one slip (a letter added, left out,
 * changed, or two neighbours swapped) for each three letters, without regard to case, hyphens and spaces.
 */
export function didYouMean(word: string, candidates: Iterable<string>): string | null {
  const wanted = bare(word);
  if (wanted === '' || wanted.length > longest) return null;
  let best: { readonly candidate: string; readonly slips: number } | null = null;
  for (const candidate of candidates) {
    const other = bare(candidate);
    const allowed = Math.max(1, Math.floor(Math.max(wanted.length, other.length) / 3));
    if (other.length > longest || Math.abs(other.length - wanted.length) > allowed) continue;
    const slips = slipsBetween(wanted, other);
    if (
      slips <= allowed &&
      slips < Math.max(wanted.length, other.length) &&
      slips < (best?.slips ?? Infinity)
    )
      best = { candidate, slips };
  }
  return best?.candidate ?? null;
}

/** Longer words than any key or id: nobody means one of those. */
const longest = 64;

function bare(word: string): string {
  return word.toLowerCase().replace(/[-_ ]/g, '');
}

/** Optimal string alignment distance: insertions, deletions, substitutions and swaps of neighbours. */
function slipsBetween(a: string, b: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let slips = Math.min((previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, changed);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        slips = Math.min(slips, (before[j - 2] ?? 0) + 1);
      row.push(slips);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}
