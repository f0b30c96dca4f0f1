import { all, create, type Unit as MathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/quantities/quantity.ts';
import { findUnit, siUnit, units, unitsOf } from '../../src/quantities/units.ts';
import { kinds } from './kinds.ts';

const math = create(all ?? {});

/** The SI unit of each kind as mathjs names it; null where it is a bare number. */
const siInMathjs: Readonly<Record<Kind, string | null>> = {
  number: null,
  share: null,
  turns: null,
  length: 'm',
  area: 'm^2',
  mass: 'kg',
  force: 'N',
  torque: 'N m',
  time: 's',
  speed: 'm / s',
  angle: 'rad',
  temperature: 'K',
  pressure: 'Pa',
  'specific-energy': 'J / kg',
  loading: 'N / m^2',
  density: 'kg / m^3',
  impulse: 'N s',
  energy: 'J',
  power: 'W',
  'mass-per-length': 'kg / m',
  'time-per-mass': 's / kg',
};

/**
 * One of each unit in units mathjs (Apache-2.0) knows by itself. It has no gram-force, ounce-force, knot or conventional
 * column of mercury: those are composed of kilogram-force, pound-force, nautical mile (1852 m, First International
 * Extraordinary Hydrographic Conference, 1929) and pascal (133.322387415 Pa, BS 350: Part 1: 1974, from memory).
 */
const inMathjs: Readonly<Record<string, readonly [number, string]>> = {
  'length mm': [1, 'mm'],
  'length cm': [1, 'cm'],
  'length dm': [1, 'dm'],
  'length m': [1, 'm'],
  'length in': [1, 'inch'],
  'length ft': [1, 'foot'],
  'length yd': [1, 'yard'],
  'area mm2': [1, 'mm^2'],
  'area cm2': [1, 'cm^2'],
  'area dm2': [1, 'dm^2'],
  'area m2': [1, 'm^2'],
  'area in2': [1, 'sqin'],
  'area ft2': [1, 'sqft'],
  'mass mg': [1, 'mg'],
  'mass g': [1, 'gram'],
  'mass kg': [1, 'kg'],
  'mass oz': [1, 'ounce'],
  'mass lb': [1, 'lbm'],
  'force mN': [1, 'mN'],
  'force N': [1, 'N'],
  'force gf': [0.001, 'kgf'],
  'force kgf': [1, 'kgf'],
  'force ozf': [1 / 16, 'lbf'],
  'force lbf': [1, 'lbf'],
  'torque mN·m': [1, 'mN m'],
  'torque N·mm': [1, 'N mm'],
  'torque N·cm': [1, 'N cm'],
  'torque N·m': [1, 'N m'],
  'torque gf·cm': [0.001, 'kgf cm'],
  'torque kgf·cm': [1, 'kgf cm'],
  'torque ozf·in': [1 / 16, 'lbf inch'],
  'torque lbf·in': [1, 'lbf inch'],
  'torque lbf·ft': [1, 'lbf foot'],
  'time s': [1, 's'],
  'time min': [1, 'minute'],
  'time ms': [1, 'ms'],
  'time h': [1, 'hour'],
  'time days': [1, 'day'],
  'speed m/s': [1, 'm / s'],
  'speed km/h': [1, 'km / hour'],
  'speed mph': [1, 'mile / hour'],
  'speed kn': [1852, 'm / hour'],
  'speed ft/s': [1, 'foot / s'],
  'angle °': [1, 'deg'],
  'angle rad': [1, 'rad'],
  'temperature °C': [1, 'degC'],
  'temperature °F': [1, 'degF'],
  'temperature K': [1, 'K'],
  'pressure hPa': [1, 'hPa'],
  'pressure mbar': [1, 'mbar'],
  'pressure kPa': [1, 'kPa'],
  'pressure Pa': [1, 'Pa'],
  'pressure inHg': [25.4 * 133.322387415, 'Pa'],
  'pressure mmHg': [133.322387415, 'Pa'],
  'specific-energy J/g': [1, 'J / gram'],
  'specific-energy kJ/kg': [1, 'kJ / kg'],
  'specific-energy J/kg': [1, 'J / kg'],
  'specific-energy ft·lbf/lb': [1, 'foot lbf / lbm'],
  'loading g/dm2': [0.001, 'kgf / dm^2'],
  'loading kg/m2': [1, 'kgf / m^2'],
  'loading N/m2': [1, 'N / m^2'],
  'loading oz/ft2': [1 / 16, 'lbf / foot^2'],
  'loading lb/ft2': [1, 'lbf / foot^2'],
  'density g/cm3': [1, 'gram / cm^3'],
  'density kg/m3': [1, 'kg / m^3'],
  'impulse N·s': [1, 'N s'],
  'impulse gf·s': [0.001, 'kgf s'],
  'energy J': [1, 'J'],
  'energy kJ': [1, 'kJ'],
  'energy ft·lbf': [1, 'foot lbf'],
  'power W': [1, 'W'],
  'power mW': [1, 'mW'],
  'mass-per-length kg/m': [1, 'kg / m'],
  'mass-per-length g/mm': [1, 'gram / mm'],
  'mass-per-length oz/in': [1, 'ounce / inch'],
  'time-per-mass s/kg': [1, 's / kg'],
  'time-per-mass s/g': [1, 's / gram'],
  'time-per-mass s/oz': [1, 's / ounce'],
};

/** What the numbers without dimension mean, by definition. */
const bare: Readonly<Record<string, number>> = {
  'number 1': 1,
  'number %': 0.01,
  'share 1': 1,
  'share %': 0.01,
  'turns turns': 1,
};

function inSiByMathjs(amount: number, name: string, kind: Kind): number {
  const unit = math.unit(amount, name) as MathUnit;
  return unit.toNumber(siInMathjs[kind] ?? '');
}

describe('every unit of the table', () => {
  it.each(units.map((unit) => [`${unit.kind} ${unit.symbol}`, unit] as const))(
    '%s has the factor mathjs gives',
    (name, unit) => {
      const expected = inMathjs[name];
      if (expected === undefined) {
        expect(unit.factor).toBe(bare[name]);
        return;
      }
      const [amount, mathName] = expected;
      // Two points, so that an offset shows: 0 and 1 for temperatures, the latter alone is enough for the others.
      const one = inSiByMathjs(amount, mathName, unit.kind);
      const zero = inSiByMathjs(0, mathName, unit.kind);
      expect(Math.abs(unit.factor + (unit.offset ?? 0) - one) / one).toBeLessThan(1e-12);
      expect(Math.abs((unit.offset ?? 0) - zero)).toBeLessThan(1e-12 * Math.max(zero, 1));
    },
  );

  it('has a symbol that no other unit of its kind shares, and spellings that lead to it alone', () => {
    for (const kind of kinds) {
      const names = unitsOf(kind).flatMap(({ symbol, spellings }) => [symbol, ...new Set(spellings)]);
      expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
    }
  });

  it('and every kind has a unit with the factor 1', () => {
    expect(kinds.map((kind) => siUnit(kind).symbol)).toEqual([
      '1',
      'm',
      'm2',
      'kg',
      'N',
      'N·m',
      's',
      'm/s',
      'rad',
      'K',
      'Pa',
      'J/kg',
      'N/m2',
      'kg/m3',
      '1',
      'turns',
      'N·s',
      'J',
      'W',
      'kg/m',
      's/kg',
    ]);
  });
});

describe('findUnit', () => {
  it('takes the units of figures as data files write them', () => {
    const written: readonly (readonly [Kind, string])[] = [
      ['length', 'm'],
      ['area', 'm2'],
      ['angle', 'rad'],
      ['mass', 'kg'],
      ['mass-per-length', 'kg/m'],
      ['force', 'N'],
      ['torque', 'N.m'],
      ['impulse', 'N.s'],
      ['loading', 'N/m2'],
      ['energy', 'J'],
      ['specific-energy', 'J/kg'],
      ['power', 'W'],
      ['time', 's'],
      ['time-per-mass', 's/kg'],
      ['speed', 'm/s'],
      ['turns', 'turns'],
    ];
    expect(written.filter(([kind, symbol]) => findUnit(kind, symbol) !== siUnit(kind))).toEqual([]);
  });

  it('lets case differ, but never takes mega for milli', () => {
    expect(findUnit('mass', 'KG')?.symbol).toBe('kg');
    expect(findUnit('length', 'FT')?.symbol).toBe('ft');
    expect(findUnit('torque', 'MN·m')).toBeNull();
    expect(findUnit('length', 'MM')).toBeNull();
  });
});
