import { toUnit } from '../quantities/format.ts';
import type { Kind } from '../quantities/quantity.ts';
import type { Counted, Term } from './figure.ts';
import { type Formula, number, quantity } from './formula.ts';
import { kindOfUnit } from './unit-kind.ts';

/** A measured number is shown as it was written, but for digits nobody can mean. */
const digitsOfInput = 6;
/** So many of another figure let a reader reckon along; how sure it is stands beside the figure itself. */
const digitsOfFigure = 4;

export type InputTerm = Extract<Term, { from: 'input' }>;

/** What one figure was worked out from, ready to be put into its formula. */
export class Given {
  readonly terms: readonly Term[];

  constructor(terms: readonly Term[]) {
    this.terms = terms;
  }

  /** Another figure it read, in a unit. Throws RangeError where it read none of that id. */
  figure(id: string, unit: string, digits: number = digitsOfFigure): Formula {
    const term = this.terms.find((one) => one.from === 'figure' && one.id === id);
    if (term === undefined || term.from !== 'figure')
      throw new RangeError(`the figure ${id} is not among what was read`);
    return shown(term.value, kindOfUnit(term.unit), unit, digits);
  }

  /** What was measured, or stands in for it, in the order in which it was read. */
  get inputs(): readonly InputTerm[] {
    return this.terms.filter((term) => term.from === 'input');
  }

  /** The terms from each one that begins a group up to the next; what comes before the first is left out. */
  groups(begins: (term: Term) => boolean): Given[] {
    const groups: Term[][] = [];
    for (const term of this.terms) {
      if (begins(term)) groups.push([term]);
      else groups.at(-1)?.push(term);
    }
    return groups.map((group) => new Given(group));
  }

  /** The number of things of that name; null where it read none. */
  count(name: Counted): number | null {
    const term = this.terms.find((one) => one.from === 'count' && one.name === name);
    return term?.from === 'count' ? term.value : null;
  }
}

/** An input in a unit. */
export function shownInput({ quantity: { value, kind } }: InputTerm, unit: string): Formula {
  return shown(value, kind, unit, digitsOfInput);
}

/** A value in SI as it stands in a line of numbers. */
export function shown(value: number, kind: Kind, unit: string, digits: number): Formula {
  return quantity(plainDigits(toUnit(value, kind, unit), digits), unit === '1' ? '' : unitInPrint(unit));
}

/** To so many digits, whole numbers in full, and no exponent. */
function plainDigits(value: number, digits: number): string {
  const rounded = Math.abs(value) >= 10 ** digits ? Math.round(value) : Number(value.toPrecision(digits));
  const text = Math.abs(rounded) < 1e-6 && rounded !== 0 ? rounded.toFixed(digits + 6) : String(rounded + 0);
  return text.replace('-', '−');
}

/** A count as it stands in a line of numbers. */
export function shownCount(count: number): Formula {
  return number(String(count));
}

function unitInPrint(symbol: string): string {
  return symbol.replace(/(?<=[a-z])2/g, '²').replace(/(?<=[a-z])3/g, '³');
}
