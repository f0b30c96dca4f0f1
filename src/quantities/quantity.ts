/** What a number measures. Each kind has one SI unit, in which every value is kept. */
export type Kind =
  | 'number'
  | 'length'
  | 'area'
  | 'mass'
  | 'force'
  | 'torque'
  | 'time'
  | 'speed'
  | 'angle'
  | 'temperature'
  | 'pressure'
  | 'specific-energy'
  | 'loading'
  | 'density'
  | 'share'
  | 'turns'
  | 'impulse'
  | 'energy'
  | 'power'
  | 'mass-per-length'
  | 'time-per-mass';

/** Where a number comes from; decides the basis of every figure that rests on it. */
export type Origin = 'measured' | 'inspected' | 'logged' | 'assumed' | 'exact';

/**
 * One number with its standard uncertainty, in SI. The object itself is the base input of the uncertainty
 * propagation: two figures that read the same object share its error, two equal objects do not.
 */
export interface Quantity {
  readonly kind: Kind;
  /** In the SI unit of its kind. */
  readonly value: number;
  /** Standard uncertainty (one sigma), in the same unit; 0 for exact counts. */
  readonly u: number;
  readonly origin: Origin;
  /** The text it was read from, trimmed; empty for a number that nobody wrote. */
  readonly written: string;
}

/** Why a text is not a quantity: everything a problem needs, but its place. */
export interface Fault {
  readonly code: FaultCode;
  /** A full sentence that says what is wrong; without the field's name, which the caller puts in front. */
  readonly message: string;
  readonly found: string;
  /** The accepted forms, with an example. */
  readonly accepted: string;
  /** A replacement text that would be accepted, where one can be offered. */
  readonly suggestion?: string;
}

export type FaultCode =
  | 'not-a-quantity'
  | 'missing-unit'
  | 'unknown-unit'
  | 'wrong-kind-of-unit'
  | 'ambiguous-number'
  | 'impossible-value';

export type Parsed<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: Fault };
