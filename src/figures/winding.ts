import type { Quantity } from '../quantities/quantity.ts';
import type { Reader } from './definition.ts';
import type { NumberedMotor, Subject } from './subject.ts';
import { readTurns } from './turns-reading.ts';

/** How far a motor is wound; each is read only where it is asked for. */
export interface Winding {
  /** Null where they are not known. */
  readonly turns: () => number | null;
  /** Of the break turns. */
  readonly share: () => number;
}

/** Below this share of the break turns the stretch model reads low. */
const hardlyWound = 0.7;

/** As the motor was wound for the flight; where the flight does not say, to a share that is common practice. */
export function windingAtLaunch(from: Reader, subject: Subject, motor: NumberedMotor): Winding {
  return {
    turns: () => readTurns(from, subject, motor),
    share: () => {
      const share = from.figure('wound-share');
      if (share < hardlyWound)
        from.note(
          'wound to less than 0.7 of the break turns: its energy is reckoned low, for rubber stretched less gives back more of what went in',
        );
      return share;
    },
  };
}

/** As the motor was wound for a bench log that states its turns. */
export function windingOfLog(from: Reader, turns: Quantity, file: string): Winding {
  const wound = from.value(turns, `the turns of ${file}`);
  return { turns: () => wound, share: () => wound / from.figure('break-turns') };
}

/** Turns put in; where they are not known, those of the share wound. */
export function turnsWound(from: Reader, { turns, share }: Winding): number {
  return turns() ?? share() * from.figure('break-turns');
}
