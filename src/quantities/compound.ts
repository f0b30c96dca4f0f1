import type { Unit } from './units.ts';

/** Units that are written one after another, `10 ft 6 in`, the larger first. */
const families: readonly (readonly string[])[] = [
  ['yd', 'ft', 'in'],
  ['m', 'dm', 'cm', 'mm'],
  ['lb', 'oz'],
  ['kg', 'g', 'mg'],
  ['lbf', 'ozf'],
  ['kgf', 'gf'],
  ['days', 'h', 'min', 's', 'ms'],
];

/** Whether `part` of a smaller unit may follow a whole number of the larger one: `6 in` after feet, but not `14 in`. */
export function mayFollow(larger: Unit, smaller: Unit, part: number): boolean {
  const family = families.find((symbols) => symbols.includes(larger.symbol)) ?? [];
  const further = family.indexOf(smaller.symbol) > family.indexOf(larger.symbol);
  return further && part * smaller.factor < larger.factor * (1 - 1e-12);
}
