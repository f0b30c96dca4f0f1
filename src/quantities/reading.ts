import type { Fault } from './quantity.ts';

/** What a text says, in SI, before its uncertainty is known. */
export interface Reading {
  readonly ok: true;
  readonly value: number;
  /** Of the last digit written, SI. */
  readonly resolution: number;
  /** A fraction is a nominal size: its step is no resolution of a reading. */
  readonly nominal: boolean;
  /** The text ended in a unit, rather than in a bare number. */
  readonly hasUnit: boolean;
}

export type Unread = { readonly ok: false; readonly fault: Fault };
