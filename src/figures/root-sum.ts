import type { Share } from './figure.ts';

/** What one base input, moved by its standard uncertainty, does to a figure. */
export interface Contribution {
  readonly input: string;
  /** Half the difference between the figure with the input moved up and moved down, in the figure's unit. */
  readonly change: number;
}

/**
 * Combined standard uncertainty of independent inputs, √Σ change² (JCGM 100:2008, equation 11a, with the sensitivities
 * already multiplied in), and each input's share of the variance, the largest first; inputs of one name are merged.
 */
export function rootSum(contributions: readonly Contribution[]): { u: number; shares: readonly Share[] } {
  const variances = new Map<string, number>();
  let total = 0;
  for (const { input, change } of contributions) {
    const variance = change * change;
    if (variance === 0) continue;
    total += variance;
    variances.set(input, (variances.get(input) ?? 0) + variance);
  }
  const shares = [...variances].map(([input, variance]) => ({ input, share: variance / total }));
  shares.sort((a, b) => b.share - a.share || (a.input < b.input ? -1 : 1));
  return { u: Math.sqrt(total), shares };
}
