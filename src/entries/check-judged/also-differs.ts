import type { Design } from '../../model/design.ts';
import type { Entry, Setup } from '../../model/entry.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { pathInForce } from './written-in-setup.ts';

/** An entry as it is compared: what it says, and where. */
export interface WrittenEntry {
  readonly entry: Entry;
  readonly source: SourceDocument;
}

interface Measure {
  /** As in the file, such as `wing.span`. */
  readonly path: Path;
  readonly quantity: Quantity;
}

/**
 * The same aircraft in two challenges should have the same measures, or have been changed in between. A measure with
 * which the later entry begins is a note where the earlier entry has that measure and none of its setups has that value.
 *
 * @param newestFirst the entries of all challenges, those of the newest challenge first
 */
export function checkAlsoDiffers(newestFirst: readonly WrittenEntry[]): Problem[] {
  const places = new Map(newestFirst.map((one) => [placeOf(one.entry), one]));
  const order = new Map([...places.keys()].map((place, index) => [place, index]));
  const pairs = new Map<string, readonly [WrittenEntry, WrittenEntry]>();
  for (const one of newestFirst)
    for (const place of one.entry.also) {
      const other = places.get(place);
      if (other === undefined || other === one) continue;
      const isLater = order.get(placeOf(one.entry))! < order.get(place)!;
      const [later, earlier] = isLater ? [one, other] : [other, one];
      pairs.set(`${placeOf(later.entry)} ${placeOf(earlier.entry)}`, [later, earlier]);
    }
  return [...pairs.values()].flatMap(([later, earlier]) => differences(later, earlier));
}

function differences(later: WrittenEntry, earlier: WrittenEntry): Problem[] {
  const setups = earlier.entry.setups.map((setup) => measuresOf(setup));
  return measuresOf(later.entry.setups[0]).flatMap(({ path, quantity }) => {
    const key = path.join('.');
    const known = setups.map((measures) => measures.find((one) => one.path.join('.') === key)?.quantity);
    const last = known.at(-1);
    if (last === undefined || known.some((one) => one !== undefined && areEqual(one, quantity))) return [];
    const field = fieldName(later.source, path);
    const there = pathInForce(earlier.source, earlier.entry.setups, setups.length - 1, key);
    return [
      problemAt(later.source, path, 'value', 'also-differs', {
        message: `${field} is "${quantity.written}", and was "${last.written}" for the same aircraft in ${placeOf(earlier.entry)}. If it was changed in between, all is well; else correct the one that is wrong.`,
        found: quantity.written,
        related: { ...locate(earlier.source, there, 'value'), message: 'the other value stands here' },
      }),
    ];
  });
}

function placeOf({ challenge, id }: Entry): string {
  return `${challenge}/${id}`;
}

function areEqual(a: Quantity, b: Quantity): boolean {
  return (
    a.kind === b.kind && Math.abs(a.value - b.value) <= 1e-9 * Math.max(Math.abs(a.value), Math.abs(b.value))
  );
}

/** What is a reading of a test, or an official's, is no measure of the aircraft as its builder gives it. */
const apart: readonly (keyof Design | string)[] = ['inspected', 'breakTurns', 'thrustLog', 'torqueLog'];

/** Every quantity that was written of a design, with its place in the file. */
function measuresOf({ design }: Setup): Measure[] {
  return quantitiesIn(design, []);
}

function quantitiesIn(value: unknown, path: Path): Measure[] {
  if (typeof value !== 'object' || value === null) return [];
  if (isQuantity(value)) return value.written === '' ? [] : [{ path, quantity: value }];
  if (Array.isArray(value)) return value.flatMap((item, index) => quantitiesIn(item, [...path, index]));
  return Object.entries(value)
    .filter(([key]) => !apart.includes(key))
    .flatMap(([key, item]) => quantitiesIn(item, [...path, asWritten(key)]));
}

function isQuantity(value: object): value is Quantity {
  return 'kind' in value && 'value' in value && 'written' in value;
}

/** `downThrust` stands as `down-thrust` in a file. */
function asWritten(key: string): string {
  return key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}
