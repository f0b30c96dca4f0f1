import type { Path, Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';
import { countAt } from './value-at.ts';

/** Lists of a flight that hold one value for each item of motors, or one for all of them. */
const keys: ReadonlySet<string> = new Set(['turns', 'wound-to', 'turns-left', 'launch-torque']);

/** Whether a list goes by the motors. */
export function isPerMotor(list: Path): boolean {
  return list[0] === 'flights' && keys.has(String(list.at(-1)));
}

/** How many kinds of motors an entry has, in whichever of its setups it has most. */
export function motorsOf(written: Plain): number {
  const later = isMap(written) ? written.setups : undefined;
  const setups = later !== undefined && isList(later) ? later : [];
  const counts = setups.map((_, place) => countAt(written, ['setups', place, 'motors']));
  return Math.max(1, countAt(written, ['motors']), ...counts);
}
