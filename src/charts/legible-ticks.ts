import { widthOfName } from './placed-name.ts';

/** Room between two words on one line. */
const gap = 8;

/**
 * Of words that stand on one line, centred on their places, as many as can be read: first those that come `first`, then the
 * others from left to right. They come back in the order of their places.
 */
export function legibleTicks<
  T extends { readonly x: number; readonly text: string; readonly first: boolean },
>(ticks: readonly T[]): readonly T[] {
  const kept: T[] = [];
  const room = ({ x, text }: T): { left: number; right: number } => {
    const half = (widthOfName(text) + gap) / 2;
    return { left: x - half, right: x + half };
  };
  for (const tick of [...ticks.filter(({ first }) => first), ...ticks.filter(({ first }) => !first)]) {
    const { left, right } = room(tick);
    if (kept.every((other) => room(other).right <= left || right <= room(other).left)) kept.push(tick);
  }
  return kept.sort((a, b) => a.x - b.x);
}
