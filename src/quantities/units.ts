import type { Kind } from './quantity.ts';
import { unitKey } from './unit-key.ts';

/** One way to write a quantity of a kind: SI value = number × factor + offset. */
export interface Unit {
  /** As we write it ourselves. */
  readonly symbol: string;
  readonly kind: Kind;
  /** To the SI unit of the kind. */
  readonly factor: number;
  /** In the SI unit; only temperatures have one. */
  readonly offset?: number;
  /** Further ways people write it, as `unitKey` normalises them; the symbol itself is not repeated. */
  readonly spellings: readonly string[];
  /** n where the factor is exactly 10^n and there is no offset: then values are shifted as decimals, without error. */
  readonly decimalShift: number | null;
}

/** International yard and pound agreement, 1959: exact by definition. */
const yard = 0.9144;
const pound = 0.45359237;
const foot = yard / 3;
/** Metres. */
export const inch = 0.0254;
const ounce = pound / 16;
/** Standard acceleration of gravity, m/s², 3rd CGPM 1901: exact by definition. */
const gravity = 9.80665;
const gramForce = 0.00980665;
const ounceForce = ounce * gravity;
const poundForce = pound * gravity;

/** In a force field, and under a torque or a loading, a mass stands for its weight. */
const grams = ['gf', 'g', 'gr', 'gram', 'grams'];
const kilograms = ['kgf', 'kg', 'kp'];
const ounces = ['ozf', 'oz', 'ounce', 'ounces'];
const pounds = ['lbf', 'lb', 'lbs', 'pound', 'pounds'];
const inches = ['in', 'inch', 'inches', '"'];
const feet = ['ft', 'foot', 'feet', "'"];
const squareFeet = ['ft2', 'sq.ft'];

function each(left: readonly string[], between: string, right: readonly string[]): string[] {
  return left.flatMap((first) => right.map((second) => first + between + second));
}

/** A force at an arm, in either order: `ozf.in`, `in.oz`, `ozin`. */
function turning(forces: readonly string[], arms: readonly string[]): string[] {
  return [...each(forces, '.', arms), ...each(arms, '.', forces), ...each(forces, '', arms)];
}

const specificImperial = ['lb', 'lbs', 'lbm'].flatMap((mass) =>
  turning(pounds, feet).map((energy) => `${energy}/${mass}`),
);

function unit(
  kind: Kind,
  symbol: string,
  factor: number,
  spellings: readonly string[] = [],
  offset?: number,
): Unit {
  const power = Math.round(Math.log10(factor));
  const decimalShift = offset === undefined && Number(`1e${power}`) === factor ? power : null;
  const own = unitKey(symbol);
  const others = [...new Set(spellings)].filter((spelling) => spelling !== own);
  return {
    symbol,
    kind,
    factor,
    ...(offset === undefined ? {} : { offset }),
    spellings: others,
    decimalShift,
  };
}

/** Every unit that can be written, by kind; within a kind in the order in which they are offered. */
export const units: readonly Unit[] = [
  unit('number', '1', 1, ['']),
  unit('number', '%', 0.01, ['percent', 'per.cent']),

  unit('length', 'mm', 0.001, ['millimetre', 'millimetres', 'millimeter', 'millimeters']),
  unit('length', 'cm', 0.01, ['centimetre', 'centimetres', 'centimeter', 'centimeters']),
  unit('length', 'dm', 0.1, ['decimetre', 'decimetres', 'decimeter', 'decimeters']),
  unit('length', 'm', 1, ['metre', 'metres', 'meter', 'meters']),
  unit('length', 'in', inch, inches),
  unit('length', 'ft', foot, feet),
  unit('length', 'yd', yard, ['yds', 'yard', 'yards']),

  unit('area', 'mm2', 1e-6, ['sq.mm']),
  unit('area', 'cm2', 1e-4, ['sq.cm']),
  unit('area', 'dm2', 0.01, ['sq.dm']),
  unit('area', 'm2', 1, ['sq.m']),
  unit('area', 'in2', inch * inch, ['sq.in', 'sq.inch', 'sq.inches']),
  unit('area', 'ft2', foot * foot, [...squareFeet, 'sq.foot', 'sq.feet']),

  unit('mass', 'mg', 1e-6, ['milligram', 'milligrams']),
  unit('mass', 'g', 0.001, ['gr', 'gram', 'grams', 'gramme', 'grammes']),
  unit('mass', 'kg', 1, ['kilogram', 'kilograms', 'kilo', 'kilos']),
  unit('mass', 'oz', ounce, ['ounce', 'ounces']),
  unit('mass', 'lb', pound, ['lbs', 'lbm', 'pound', 'pounds']),

  unit('force', 'mN', 0.001),
  unit('force', 'N', 1, ['newton', 'newtons']),
  unit('force', 'gf', gramForce, grams),
  unit('force', 'kgf', gravity, kilograms),
  unit('force', 'ozf', ounceForce, ounces),
  unit('force', 'lbf', poundForce, pounds),

  unit('torque', 'mN·m', 0.001, turning(['mN'], ['m'])),
  unit('torque', 'N·mm', 0.001, turning(['N'], ['mm'])),
  unit('torque', 'N·cm', 0.01, ['cN.m', 'cm.N', 'Ncm', 'cNm']),
  unit('torque', 'N·m', 1, turning(['N'], ['m'])),
  unit('torque', 'gf·cm', gramForce / 100, turning(grams, ['cm'])),
  unit('torque', 'kgf·cm', gravity / 100, turning(kilograms, ['cm'])),
  unit('torque', 'ozf·in', ounceForce * inch, [
    ...turning(ounces, inches),
    ...each(inches, '', ['ozf', 'oz']),
  ]),
  unit('torque', 'lbf·in', poundForce * inch, [
    ...turning(pounds, inches),
    ...each(inches, '', ['lbf', 'lb', 'lbs']),
  ]),
  unit('torque', 'lbf·ft', poundForce * foot, [
    ...turning(pounds, feet),
    ...each(feet, '', ['lbf', 'lb', 'lbs']),
  ]),

  unit('time', 's', 1, ['sec', 'secs', 'second', 'seconds']),
  unit('time', 'min', 60, ['Min', 'mins', 'minute', 'minutes']),
  unit('time', 'ms', 0.001, ['millisecond', 'milliseconds']),
  unit('time', 'h', 3600, ['hr', 'hrs', 'hour', 'hours']),
  unit('time', 'days', 86_400, ['day']),

  unit('speed', 'm/s', 1, ['mps']),
  unit('speed', 'km/h', 1 / 3.6, ['km/hr', 'kmh', 'kph']),
  unit('speed', 'mph', 0.44704, ['MPH', 'mi/h']),
  unit('speed', 'kn', 1852 / 3600, ['kt', 'kts', 'knot', 'knots']),
  unit('speed', 'ft/s', foot, ['fps', 'ft/sec']),

  unit('angle', '°', Math.PI / 180, ['deg', 'degree', 'degrees']),
  unit('angle', 'rad', 1, ['radian', 'radians']),

  unit('temperature', '°C', 1, ['C', 'degC', 'deg.C', '°.C', 'celsius'], 273.15),
  unit('temperature', '°F', 5 / 9, ['F', 'degF', 'deg.F', '°.F', 'fahrenheit'], 273.15 - 160 / 9),
  unit('temperature', 'K', 1, ['kelvin']),

  unit('pressure', 'hPa', 100),
  unit('pressure', 'mbar', 100, ['mb', 'millibar', 'millibars']),
  unit('pressure', 'kPa', 1000),
  unit('pressure', 'Pa', 1),
  // The conventional millimetre of mercury, 13.5951 × 9.80665 Pa; an inch is 25.4 of them.
  unit('pressure', 'inHg', 25.4 * 133.322387415, ['in.Hg', '"Hg']),
  unit('pressure', 'mmHg', 133.322387415, ['mm.Hg']),

  unit('specific-energy', 'J/g', 1000),
  unit('specific-energy', 'kJ/kg', 1000),
  unit('specific-energy', 'J/kg', 1),
  unit('specific-energy', 'ft·lbf/lb', foot * gravity, specificImperial),

  unit('loading', 'g/dm2', gramForce / 0.01, each(grams, '/', ['dm2', 'sq.dm'])),
  unit('loading', 'kg/m2', gravity, each(kilograms, '/', ['m2', 'sq.m'])),
  unit('loading', 'N/m2', 1, ['N/sq.m']),
  unit('loading', 'oz/ft2', ounceForce / (foot * foot), each(ounces, '/', squareFeet)),
  unit('loading', 'lb/ft2', poundForce / (foot * foot), each(pounds, '/', squareFeet)),

  unit('density', 'g/cm3', 1000, ['g/cc']),
  unit('density', 'kg/m3', 1),

  unit('share', '%', 0.01, ['percent', 'per.cent']),
  unit('share', '1', 1, ['']),

  unit('turns', 'turns', 1, ['', 'turn']),

  unit('impulse', 'N·s', 1, ['Ns', 's.N']),
  unit('impulse', 'gf·s', gramForce, [...each(grams, '.', ['s']), 's.gf', 's.g']),

  unit('energy', 'J', 1, ['joule', 'joules']),
  unit('energy', 'kJ', 1000),
  unit('energy', 'ft·lbf', foot * poundForce, turning(pounds, feet)),

  unit('power', 'W', 1, ['watt', 'watts']),
  unit('power', 'mW', 0.001),

  unit('mass-per-length', 'kg/m', 1),
  unit('mass-per-length', 'g/mm', 1),
  unit('mass-per-length', 'oz/in', ounce / inch),

  unit('time-per-mass', 's/kg', 1),
  unit('time-per-mass', 's/g', 1000),
  unit('time-per-mass', 's/oz', 1 / ounce),
];

function tableOf(key: (spelling: string) => string): ReadonlyMap<Kind, ReadonlyMap<string, Unit>> {
  const table = new Map<Kind, Map<string, Unit>>();
  for (const one of units) {
    const spellings = table.get(one.kind) ?? new Map<string, Unit>();
    table.set(one.kind, spellings);
    // A bare number has no unit to write; `1` is only what we call it.
    const own = one.symbol === '1' ? [] : [unitKey(one.symbol)];
    for (const spelling of [...own, ...one.spellings]) {
      if (!spellings.has(key(spelling))) spellings.set(key(spelling), one);
    }
  }
  return table;
}

const bySpelling = tableOf((spelling) => spelling);
const bySpellingInAnyCase = tableOf((spelling) => spelling.toLowerCase());
const noSpellings: ReadonlyMap<string, Unit> = new Map();

/** The units of a kind, in the order in which they are offered. */
export function unitsOf(kind: Kind): readonly Unit[] {
  return units.filter((one) => one.kind === kind);
}

/** The SI unit of a kind: the one in which values are kept. */
export function siUnit(kind: Kind): Unit {
  const found = units.find((one) => one.kind === kind && one.factor === 1 && one.offset === undefined);
  if (found === undefined) throw new RangeError(`no SI unit of ${kind} in the table`);
  return found;
}

/** All spellings of the units of a kind, as `unitKey` normalises them. */
export function spellingsOf(kind: Kind): ReadonlyMap<string, Unit> {
  return bySpelling.get(kind) ?? noSpellings;
}

/**
 * The unit of a kind that a text names, or null. Upper and lower case may differ from ours, except that an M is
 * never taken for an m: it would turn mega into milli.
 */
export function findUnit(kind: Kind, text: string): Unit | null {
  const key = unitKey(text);
  const exact = bySpelling.get(kind)?.get(key);
  if (exact !== undefined) return exact;
  if (/(?:^|[./])M/.test(key)) return null;
  return bySpellingInAnyCase.get(kind)?.get(key.toLowerCase()) ?? null;
}

/** The kinds that have a unit of this spelling, in the order of the table. */
export function kindsWith(text: string): readonly Kind[] {
  const key = unitKey(text);
  if (key === '') return [];
  return [...bySpelling].filter(([, spellings]) => spellings.has(key)).map(([kind]) => kind);
}

/** Every value of a page asks for its unit by symbol: no table of a hundred is searched for it. */
const bySymbol: ReadonlyMap<Kind, ReadonlyMap<string, Unit>> = new Map(
  [...bySpelling.keys()].map((kind) => [kind, new Map(unitsOf(kind).map((one) => [one.symbol, one]))]),
);

/** A unit of a kind by symbol or spelling; throws RangeError where there is none (a mistake in the code). */
export function unitNamed(kind: Kind, symbol: string): Unit {
  const found = bySymbol.get(kind)?.get(symbol) ?? findUnit(kind, symbol);
  if (found === null) throw new RangeError(`"${symbol}" is no unit of ${kind}`);
  return found;
}
