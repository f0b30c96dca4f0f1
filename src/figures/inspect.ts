import type { Inspected } from '../model/design.ts';
import type { Entry, Setup } from '../model/entry.ts';
import type { Inspection } from '../model/ruling.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { setupInForce } from './setup-in-force.ts';

/** What a setup must write itself for an inspected value of an earlier setup to end. */
const endedBy: Readonly<Record<keyof Inspected, readonly string[]>> = {
  span: ['wing.span'],
  wingArea: ['wing.area', 'wing.chord', 'wing.panels'],
  airframe: ['mass.airframe', 'mass.flying'],
  rubber: ['motors'],
  balance: ['balance'],
};

const things = Object.keys(endedBy) as (keyof Inspected)[];

/**
 * An entry's setups with what officials measured laid over them, as `design.inspected`. An inspection holds for the
 * setup in force on its date and for later ones until one of them overrides that very thing; a later inspection of
 * the same thing replaces an earlier one. Setups that no inspection reaches are returned as they are.
 */
export function inspectedSetups(entry: Entry, inspections: readonly Inspection[]): Entry['setups'] {
  if (inspections.length === 0) return entry.setups;
  const inOrder = [...inspections].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const overlays: Record<keyof Inspected, Quantity | null>[] = entry.setups.map((setup) => ({
    ...nothing,
    ...setup.design.inspected,
  }));
  for (const inspection of inOrder) {
    const first = setupInForce(entry.setups, inspection.date);
    for (const thing of things) {
      const quantity = inspection[thing];
      if (quantity === null) continue;
      const seen: Quantity =
        quantity.origin === 'inspected' ? quantity : { ...quantity, origin: 'inspected' };
      for (let index = first; index < entry.setups.length; index++) {
        const setup = entry.setups[index]!;
        if (index > first && overrides(setup, endedBy[thing])) break;
        overlays[index]![thing] = seen;
      }
    }
  }
  const [first, ...later] = entry.setups.map((setup, index) => lay(setup, overlays[index]!));
  return [first!, ...later];
}

const nothing: Record<keyof Inspected, Quantity | null> = {
  span: null,
  wingArea: null,
  airframe: null,
  rubber: null,
  balance: null,
};

function lay(setup: Setup, overlay: Inspected): Setup {
  if (things.every((thing) => overlay[thing] === null)) return setup;
  return { ...setup, design: { ...setup.design, inspected: overlay } };
}

/** A path written by the setup ends a thing when it is that thing, lies inside it or holds it whole. */
function overrides(setup: Setup, ends: readonly string[]): boolean {
  return setup.overrides.some((path) =>
    ends.some((end) => path === end || path.startsWith(`${end}.`) || end.startsWith(`${path}.`)),
  );
}
