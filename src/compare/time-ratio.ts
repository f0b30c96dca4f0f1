import type { ComparedTime, Measured } from './aircraft.ts';
import { isThere } from './aircraft.ts';
import { toldApart } from './apart.ts';

/** What makes one time longer than another. */
export const partNames = ['height', 'use', 'sink'] as const;
export type PartName = (typeof partNames)[number];

/** A natural logarithm of a ratio, with its standard uncertainty. */
export interface LogRatio {
  readonly ln: number;
  readonly u: number;
}

/**
 * The logarithm of a ratio of two times, and the three it is the sum of: ln(t₁/t₂) = ln(height₁/height₂) + ln(use₁/use₂) −
 * ln(sink₁/sink₂), since by the energy balance time = use × height / sink.
 */
export interface TimeSplit {
  readonly total: LogRatio;
  readonly parts: Readonly<Record<PartName, LogRatio>>;
}

/** What one flight's time is made of, all of it known. */
export type TimeNumbers = Readonly<Record<'time' | PartName, Measured>>;

/**
 * Splits the ratio of two times. Each part's uncertainty is that of both aircraft, to first order and taken as independent
 * of each other. Null where a number is not positive: it has no logarithm.
 */
export function splitTimes(one: TimeNumbers, other: TimeNumbers): TimeSplit | null {
  const numbers = [one, other].flatMap((flown) => Object.values<Measured>(flown));
  if (numbers.some(({ value }) => !(value > 0))) return null;
  return {
    total: logRatio(one.time, other.time),
    parts: {
      height: logRatio(one.height, other.height),
      use: logRatio(one.use, other.use),
      sink: logRatio(other.sink, one.sink),
    },
  };
}

/** ln(a/b); a small relative uncertainty is the uncertainty of the logarithm. */
function logRatio(a: Measured, b: Measured): LogRatio {
  return { ln: Math.log(a.value / b.value), u: Math.hypot(a.u / a.value, b.u / b.value) };
}

/** True where a ratio differs from one by more than its uncertainty allows. */
export function isClear({ ln, u }: LogRatio): boolean {
  return Math.abs(ln) > toldApart * u;
}

/** A logarithm as the factor it stands for. */
export function factorOf({ ln, u }: LogRatio): Measured {
  const value = Math.exp(ln);
  return { value, u: value * u };
}

/** The numbers of a flight; or, where one is missing, what it needs. */
export function timeNumbers(flown: ComparedTime): TimeNumbers | { readonly absent: string } {
  const { time, height, use, sink } = flown;
  if (isThere(time) && isThere(height) && isThere(use) && isThere(sink)) return { time, height, use, sink };
  const missing = [time, height, sink, use].find((number) => !isThere(number));
  return { absent: missing !== undefined && 'absent' in missing ? missing.absent : '' };
}
