import { meanAerodynamicChord } from '../airframe/planform.ts';
import type { Design } from '../model/design.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { Reader } from './definition.ts';
import { statesUncertainty } from './stated-uncertainty.ts';
import { readPanels } from './wing-readings.ts';

/** A balance cannot be found better than this on a stand, m; it is the floor of a balance written as a length, too. */
const balanceFloor = 0.002;

/** Balance as a share of the mean aerodynamic chord, behind that chord's leading edge. */
export function readBalanceShare(from: Reader, design: Design): number {
  const { balance, name } = balanceOf(design);
  if (balance === null) return from.absent('needs the balance');
  if (balance.kind === 'share') return readShare(from, balance, name);
  const chord = from.figure('mean-aerodynamic-chord');
  return (from.value(balance, name) - readChordEdge(from, design)) / chord;
}

/** Balance in m behind the leading edge at the centre line. */
export function readBalanceLength(from: Reader, design: Design): number {
  const { balance, name } = balanceOf(design);
  if (balance === null) return from.absent('needs the balance');
  if (balance.kind !== 'share') return from.value(balance, name);
  const chord = from.figure('mean-aerodynamic-chord');
  return readChordEdge(from, design) + readShare(from, balance, name) * chord;
}

function balanceOf(design: Design): { balance: Quantity | null; name: string } {
  const inspected = design.inspected?.balance ?? null;
  if (inspected !== null) return { balance: inspected, name: 'the inspected balance' };
  return { balance: design.balance, name: 'the balance' };
}

/** A share was measured as a length first: unless its ± is stated it is no better than one. */
function readShare(from: Reader, balance: Quantity, name: string): number {
  if (statesUncertainty(balance)) return from.value(balance, name);
  return from.derived(balance, name, () => {
    const chord = from.peek('mean-aerodynamic-chord');
    return { ...balance, u: chord === null ? balance.u : Math.max(balance.u, balanceFloor / chord) };
  });
}

/** How far the leading edge of the mean aerodynamic chord lies behind that at the centre line, m. */
function readChordEdge(from: Reader, design: Design): number {
  const { panels } = design.wing;
  // Without panels the chord itself already says that the wing is taken as straight.
  return panels === null ? 0 : meanAerodynamicChord(readPanels(from, panels, 'sweep matters')).leadingEdge;
}
