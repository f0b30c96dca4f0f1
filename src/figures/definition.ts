import type { Batch } from '../model/batch.ts';
import type { Kind, Quantity } from '../quantities/quantity.ts';
import type { DefaultId } from './defaults.ts';
import type { Counted, FigureUnit } from './figure.ts';
import type { Formula } from './formula.ts';
import type { FormulaLine } from './formula-line.ts';
import type { Given } from './given.ts';
import type { NumberedMotor, Subject } from './subject.ts';

/**
 * How a figure gets at its numbers. Everything a figure reads goes through here: that is how its uncertainty, its
 * basis and the reason for its absence come about without a word from the figure itself. All values are in SI.
 */
export interface Reader {
  /**
   * Reads a measurement. The object is the base input: figures that read the same object share its error. The name,
   * such as "the wing's span", is what a reader of the figure's shares of uncertainty sees.
   */
  value(quantity: Quantity, name: string): number;
  /** The same for what may be missing: the figure is then absent with "needs" and the name. */
  need(quantity: Quantity | null | undefined, name: string): number;
  /** Reads a default of `defaults.ts`; makes the figure partly assumed, unless that default is only named. */
  assume(id: DefaultId): number;
  /**
   * Reads a number condensed from several measurements, such as the mean of a list with its scatter. It is made once
   * for an evaluation; what it is of, with its name, is its identity.
   */
  derived(of: object, name: string, make: () => Pick<Quantity, 'kind' | 'value' | 'u' | 'origin'>): number;
  /** Keeps what a log or test is taken apart into for the time of one evaluation; it must not rest on a measured value. */
  once<T extends object>(of: object, make: () => T): T;
  /** Reads an exact number of things, so that who reads how the figure came about sees it. */
  count(value: number, name: Counted): number;
  /** Another figure of the same entry, or of the same motor where it is one of motors. Absent where that one is. */
  figure(id: string): number;
  /** A figure of the motor at the place given. */
  motorFigure(id: string, motor: number): number;
  /** A figure's plain value without depending on it, for choosing an uncertainty or a note; null where absent. */
  peek(id: string): number | null;
  /** Tries something that may be absent; null where it is. */
  attempt(work: () => number): number | null;
  /** States an assumption that stands in for a measurement; makes the figure partly assumed. */
  suppose(assumption: string): void;
  /** Names something worth knowing that does not make the figure assumed. */
  note(remark: string): void;
  /** Gives the figure up with a reason such as "needs a flight that can count". */
  absent(reason: string): never;
}

/** How the numbers of an entry are put into a figure's formula. */
export interface Substitution {
  /** The units in which it comes out: first as the terms give it, then others that people know. */
  readonly units: readonly [string, ...string[]];
  /** The terms put in; null where they are not put together by the formula, such as a value as it was measured. */
  readonly of: (given: Given) => Formula | null;
}

interface Described {
  readonly id: string;
  /** As a heading, such as "Wing loading". */
  readonly name: string;
  readonly unit: FigureUnit;
  /** Where the unit alone does not say how people write it: a share may be written as `38 %`. */
  readonly kind?: Kind;
  /** Rules of a challenge may use figures of the model only. */
  readonly of: 'model' | 'flight' | 'batch';
  /** One paragraph in plain words: what it is and what it says. */
  readonly explanation: string;
  /** What raises or lowers it, in plain words. */
  readonly moves: string;
  readonly formula: readonly FormulaLine[];
  readonly substitution?: Substitution;
  readonly source: string;
  /** Where the figure can be trusted. */
  readonly range: string;
}

type MotorCompute = (from: Reader, subject: Subject, motor: NumberedMotor) => number;

export interface EntryFigureDefinition extends Described {
  readonly of: 'model' | 'flight';
  readonly scope: 'entry';
  readonly compute: (from: Reader, subject: Subject) => number;
  /** For a figure that splits into one for each motor when their facts differ. */
  readonly perMotor?: { readonly when: (subject: Subject) => boolean; readonly compute: MotorCompute };
}

export interface MotorFigureDefinition extends Described {
  readonly of: 'model' | 'flight';
  readonly scope: 'motor';
  readonly compute: MotorCompute;
}

export interface BatchFigureDefinition extends Described {
  readonly of: 'batch';
  readonly scope: 'batch';
  readonly compute: (from: Reader, batch: Batch) => number;
}

/** One figure: everything that is said of it and how it is worked out. */
export type FigureDefinition = EntryFigureDefinition | MotorFigureDefinition | BatchFigureDefinition;
