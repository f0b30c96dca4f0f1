import type { Kind } from './quantity.ts';
import { unitKey } from './unit-key.ts';
import { spellingsOf, type Unit } from './units.ts';

/** The unit of a kind whose spelling is nearest to a misspelt one, or null where none is near. */
export function nearestUnit(kind: Kind, text: string): Unit | null {
  const key = unitKey(text);
  let nearest: Unit | null = null;
  // Of one or two letters every other prefix is near, a factor of ten or a thousand away: only the case may differ.
  let least = key.length < 3 ? 1 : key.length < 5 ? 2 : 3;
  for (const [spelling, unit] of spellingsOf(kind)) {
    if (spelling === '') continue;
    // A difference in case alone counts as nothing, so that MM leads to mm before it leads to m.
    const distance = editDistance(key.toLowerCase(), spelling.toLowerCase());
    if (distance < least) {
      nearest = unit;
      least = distance;
    }
  }
  return nearest;
}

/**
 * The one unit of a kind that carries a given unit of another kind further, such as m2 for m, or ozf·in for oz; null where
 * there is none, or more than one.
 */
export function unitCarriedOn(kind: Kind, text: string): Unit | null {
  const key = unitKey(text);
  const further = [...spellingsOf(kind)].filter(
    ([spelling]) => spelling.startsWith(key) && /^[./23]/.test(spelling.slice(key.length)),
  );
  const found = new Set(further.map(([, unit]) => unit));
  return found.size === 1 ? ([...found][0] ?? null) : null;
}

/** Optimal string alignment: insertions, deletions, replacements and swaps of neighbours. */
function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1];
      let cost = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1]) {
        cost = Math.min(cost, beforeLast[j - 2]! + 1);
      }
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length]!;
}
