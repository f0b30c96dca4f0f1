import { type Floor, floors, massFloor } from '../quantities/floors.ts';
import { formatQuantity } from '../quantities/format-quantity.ts';
import { listed, words } from '../words.ts';

/** One line of the table of plain readings: what is measured, and the least ± that is taken for it. */
export interface PlainReading {
  readonly what: string;
  readonly least: string;
}

const say = words.figures;

/** The least standard uncertainty of each kind of measurement, in words, from the table that every reading goes by. */
export function plainReadings(): PlainReading[] {
  return (Object.keys(say.readings) as Floor[]).map((floor) => ({
    what: say.readings[floor],
    least: floor === 'mass' ? leastOfMass() : leastOf(floor),
  }));
}

function leastOf(floor: Exclude<Floor, 'mass'>): string {
  const { share, least } = floors[floor];
  const absolute =
    floor === 'angle' ? formatQuantity(least, 'angle', '°') : formatQuantity(least, 'length', 'mm');
  return listed(
    [...(share === 0 ? [] : [say.ofValue(percent(share))]), ...(least === 0 ? [] : [absolute])],
    'or',
  );
}

function leastOfMass(): string {
  const { share, coarse, fine } = massFloor;
  return say.massReading(
    percent(share),
    formatQuantity(coarse, 'mass', 'g'),
    formatQuantity(fine, 'mass', 'g'),
  );
}

function percent(share: number): string {
  return formatQuantity(share, 'share', '%').replace(' ', '\u00a0');
}
