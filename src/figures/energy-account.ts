import { gravity } from '../flight/gravity.ts';
import { powerToStayUp } from '../flight/prediction.ts';
import type { Reader } from './definition.ts';
import { type DerivedNumbers, evaluateTogether } from './derived-numbers.ts';
import { readEnergyLeft } from './energy-left.ts';
import { type Figure, isPresent } from './figure.ts';
import { readSinkAsFlown } from './glide-readings.ts';
import { readHeightAboveLanding } from './launch-readings.ts';
import { motorCount, type Subject } from './subject.ts';

/** What may stand in the account of a flight's energy, in the order in which it comes in and goes out. */
export const energyItems = ['stored', 'height', 'left', 'there', 'aloft', 'propeller', 'rest'] as const;
export type EnergyItem = (typeof energyItems)[number];

/**
 * Where the energy of a flight went, each item in J. What is `stored` in the
 * rubber and what the `height` of the launch gives come in; what is `left` in the turns at landing goes off: so much was
 * `there`. Of it the time `aloft` took sink × weight × time, and the `propeller` as much as the default efficiency leaves.
 * The `rest` is what balances the account: climb, trim and whatever the estimates miss; below zero where more was used than
 * there was, as in rising air.
 */
export type EnergyAccount = ReadonlyMap<EnergyItem, Figure>;

/** The account, with uncertainty by the same law as every figure. Each item is absent with its reason where an input is missing. */
export function energyAccount(subject: Subject): EnergyAccount {
  return evaluateTogether(subject, energyNumbers(subject));
}

/** What the account is worked out of, to be evaluated along with other numbers. */
export function energyNumbers(subject: Subject): DerivedNumbers<EnergyAccount> {
  return {
    numbers: energyItems.map((item) => ({
      id: `account-${item}`,
      unit: 'J',
      compute: (from) => readings[item](from, subject),
    })),
    from: (figures) => new Map(energyItems.map((item, index) => [item, figures[index]!])),
  };
}

/** Why there is no account; null where every item could be worked out. */
export function missingFromAccount(account: EnergyAccount): string | null {
  const absent = [...account.values()].find((energy) => !isPresent(energy));
  return absent === undefined || isPresent(absent) ? null : absent.absent;
}

const readings: Readonly<Record<EnergyItem, (from: Reader, subject: Subject) => number>> = {
  stored: (from) => from.figure('stored-energy'),
  height: readHeightEnergy,
  left: readEnergyLeft,
  there: readThere,
  aloft: readAloft,
  propeller: readPropellerLoss,
  rest: (from, subject) =>
    readThere(from, subject) - readAloft(from, subject) - readPropellerLoss(from, subject),
};

function readHeightEnergy(from: Reader, subject: Subject): number {
  return from.figure('flying-mass') * gravity * readHeightAboveLanding(from, subject);
}

function readThere(from: Reader, subject: Subject): number {
  const there =
    from.figure('stored-energy') + readHeightEnergy(from, subject) - readEnergyLeft(from, subject);
  return there > 0 ? there : from.absent('needs more energy at launch than was left at landing');
}

function readAloft(from: Reader, subject: Subject): number {
  return powerToStayUp(from.figure('flying-mass'), readSinkAsFlown(from, subject)) * from.figure('best-time');
}

/** Nobody measures a propeller in flight: what one wastes is what the default efficiency leaves of the rubber's energy. */
function readPropellerLoss(from: Reader, subject: Subject): number {
  const efficiency = from.assume(
    motorCount(subject.design) > 1 ? 'efficiency-of-several' : 'efficiency-of-one',
  );
  return (1 - efficiency) * (from.figure('stored-energy') - readEnergyLeft(from, subject));
}
