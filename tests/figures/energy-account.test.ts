import { describe, expect, it } from 'vitest';
import {
  type EnergyItem,
  energyAccount,
  energyItems,
  missingFromAccount,
} from '../../src/figures/energy-account.ts';
import { evaluate } from '../../src/figures/evaluate.ts';
import { isPresent } from '../../src/figures/figure.ts';
import type { Subject } from '../../src/figures/subject.ts';
import { design, flown, measured, motor, subject } from './example-design.ts';

const level = { launchHeight: measured('length', 2, 0.05), drop: measured('length', 1, 0.1) };

/** The items of an account in J. */
function values(of: Partial<Subject>): Record<EnergyItem, number> {
  const account = energyAccount(subject(of));
  return Object.fromEntries(
    energyItems.map((item) => {
      const energy = account.get(item);
      if (!isPresent(energy)) throw new Error(`${item} is absent`);
      return [item, energy.value];
    }),
  ) as Record<EnergyItem, number>;
}

function figure(of: Partial<Subject>, id: string): number {
  const found = evaluate(subject(of), 'all').entry.get(id);
  if (!isPresent(found)) throw new Error(`${id} is absent`);
  return found.value;
}

describe('the account of a flight’s energy', () => {
  const of = { flown: flown({ ...level, turnsLeft: [measured('turns', 300, 2)] }) };
  const joules = values(of);

  it('balances: what came in went somewhere', () => {
    expect(joules.stored + joules.height - joules.left).toBeCloseTo(joules.there, 9);
    expect(joules.aloft + joules.propeller + joules.rest).toBeCloseTo(joules.there, 9);
  });

  it('counts the height of the launch above the landing at the weight of the model', () => {
    // By hand: 612 g of airframe and two skeins of 15.5 g make 643 g; let go 2 m up, landed 1 m lower: 0.643·9.80665·3 J.
    expect(joules.height).toBeCloseTo(18.917, 3);
  });

  it('calls that share time aloft which the energy use says', () => {
    expect(joules.aloft / joules.there).toBeCloseTo(figure(of, 'energy-use'), 12);
  });

  it('counts what is left in the turns as a motor wound that far holds it', () => {
    const wound = { flown: flown({ ...level, turns: [measured('turns', 300, 2)] }) };
    expect(joules.left).toBeCloseTo(figure(wound, 'stored-energy'), 9);
  });

  it.each([
    [1, 0.35],
    [2, 0.5],
  ])('takes off for %i propeller or propellers what the default efficiency leaves', (count, lost) => {
    const alone = values({ design: design({ motors: [motor({ count })] }), flown: flown(level) });
    expect(alone.propeller / alone.stored).toBeCloseTo(lost, 12);
  });

  it('has a rest below zero where more was used than there was', () => {
    const long = { ...flown(level), official: { seconds: 4000, u: 0.1, ruled: false, explanation: '' } };
    const beyond = values({ flown: long });
    expect(beyond.aloft).toBeGreaterThan(beyond.there);
    expect(beyond.rest).toBeLessThan(0);
  });

  it('names the efficiency it assumes', () => {
    const loss = energyAccount(subject(of)).get('propeller');
    if (!isPresent(loss)) throw new Error('absent');
    expect(loss.assumptions).toContain('several propellers turn 50 ± 15 % of the energy into height');
  });

  it('says what is missing where there is none', () => {
    expect(missingFromAccount(energyAccount(subject(of)))).toBeNull();
    expect(missingFromAccount(energyAccount(subject()))).toBe('needs a flight that can count');
    expect(missingFromAccount(energyAccount(subject({ flown: flown({ motorsRun: 1 }) })))).toBe(
      'needs a flight on which all motors ran',
    );
  });

  it('is no account where more is left than was wound', () => {
    const more = {
      flown: flown({ turns: [measured('turns', 200, 2)], turnsLeft: [measured('turns', 790, 2)] }),
    };
    expect(missingFromAccount(energyAccount(subject(more)))).toBe(
      'needs more energy at launch than was left at landing',
    );
  });
});
