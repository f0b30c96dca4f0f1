import { parseQuantity } from '../../quantities/parse.ts';
import type { Kind, Quantity } from '../../quantities/quantity.ts';

/** Units tried for a slip, the likeliest first. */
const likelyUnits: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  length: ['cm', 'mm', 'm', 'in', 'ft'],
  area: ['dm2', 'cm2', 'm2', 'mm2', 'in2', 'ft2'],
  mass: ['g', 'kg', 'mg', 'oz', 'lb'],
  torque: ['mN·m', 'N·mm', 'N·m', 'gf·cm'],
  time: ['s', 'min'],
  speed: ['m/s', 'km/h'],
  temperature: ['°C', '°F', 'K'],
  density: ['g/cm3', 'kg/m3'],
  pressure: ['hPa', 'kPa', 'mmHg', 'inHg'],
  angle: ['°', 'rad'],
};

/** The same digits in the likeliest unit that gives a plausible value, SI; null where none does. */
export function otherUnit(quantity: Quantity, isPlausible: (value: number) => boolean): string | null {
  const digits = /^\s*([+\-−]?[\d.,]+)\s*[^\d\s±]/.exec(quantity.written)?.[1];
  if (digits === undefined || quantity.written.includes('±')) return null;
  for (const unit of likelyUnits[quantity.kind] ?? []) {
    const text = unit === '°' ? `${digits}${unit}` : `${digits} ${unit}`;
    const parsed = parseQuantity(text, quantity.kind, { negative: true });
    if (parsed.ok && isPlausible(parsed.value.value)) return text;
  }
  return null;
}
