import type { Problem } from '../problems/problem.ts';
import { checkAcceptanceLapsed } from './acceptance-lapsed.ts';
import { checkBalance } from './balance-on-wing.ts';
import type { CrossCheck, Crossed } from './cross-check.ts';
import { checkDoesNotCount } from './does-not-count.ts';
import { checkFlightInFuture } from './flight-in-future.ts';
import { checkGlides } from './glide-beyond-ideal.ts';
import { checkPhotoTwice } from './photo-twice.ts';
import { checkSkeinMass } from './skein-mass.ts';
import { checkBestTime } from './time-above-ceiling.ts';
import { checkTurnsNearBreak } from './turns-near-break.ts';
import { checkWingLoading } from './wing-loading.ts';

/** Every check across text, figures and verdicts. A new one is one module and one line here. */
const crossChecks: readonly CrossCheck[] = [
  checkDoesNotCount,
  checkAcceptanceLapsed,
  checkFlightInFuture,
  checkTurnsNearBreak,
  checkSkeinMass,
  checkWingLoading,
  checkBalance,
  checkGlides,
  checkBestTime,
  checkPhotoTwice,
];

/** What all of them find about one entry. */
export function crossCheck(crossed: Crossed): Problem[] {
  return crossChecks.flatMap((check) => check(crossed));
}
