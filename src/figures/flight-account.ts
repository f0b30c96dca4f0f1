import { type DerivedNumbers, evaluateTogether } from './derived-numbers.ts';
import { type EnergyAccount, energyNumbers } from './energy-account.ts';
import type { Figure } from './figure.ts';
import { stretchNumbers } from './stretch-at-launch.ts';
import type { Subject } from './subject.ts';
import { type TimeParts, timePartNumbers } from './time-parts.ts';

/** What is told of the flight that figures are of, beside its figures. */
export interface FlightAccount {
  /** Where its energy went. */
  readonly energy: EnergyAccount;
  /** How far the rubber of each kind of motor was stretched at launch. */
  readonly stretches: readonly Figure[];
  /** What its time is made of. */
  readonly parts: TimeParts;
}

/** The account of a subject's flight. In one evaluation, since all of it rests on the same figures. */
export function flightAccount(subject: Subject): FlightAccount {
  return evaluateTogether(subject, together(subject));
}

function together(subject: Subject): DerivedNumbers<FlightAccount> {
  const energy = energyNumbers(subject);
  const stretches = stretchNumbers(subject);
  const parts = timePartNumbers(subject);
  const [first, second] = [energy.numbers.length, energy.numbers.length + stretches.numbers.length];
  return {
    numbers: [...energy.numbers, ...stretches.numbers, ...parts.numbers],
    from: (figures) => ({
      energy: energy.from(figures.slice(0, first)),
      stretches: stretches.from(figures.slice(first, second)),
      parts: parts.from(figures.slice(second)),
    }),
  };
}
