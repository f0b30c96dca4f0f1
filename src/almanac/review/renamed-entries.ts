import { entriesOf, type Sides } from './side.ts';

/** New `<challenge>/<entry>` → the old one, where an entry says by `formerly` that it is one that is gone. */
export function renamedEntries(sides: Sides): ReadonlyMap<string, string> {
  const [was, is] = [entriesOf(sides.before), entriesOf(sides.after)];
  const moved = new Map<string, string>();
  for (const [key, { read }] of is) {
    if (was.has(key)) continue;
    const old = read.value.formerly
      .map((id) => `${read.value.challenge}/${id}`)
      .find((one) => was.has(one) && !is.has(one));
    if (old !== undefined) moved.set(key, old);
  }
  return moved;
}
