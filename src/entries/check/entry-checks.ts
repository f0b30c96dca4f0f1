import { checkBreakTurnsAgree } from './break-turns-agree.ts';
import { checkBuildersOnce } from './builders-once.ts';
import type { EntryCheck } from './entry-check.ts';
import { checkEvenStrands } from './even-strands.ts';
import { checkFlightAfterSetup } from './flight-after-setup.ts';
import { checkFlightNumbers } from './flight-numbers.ts';
import { checkFlightSetups } from './flight-setups.ts';
import { checkFlightTimes } from './flight-times.ts';
import { checkFlightTurns } from './flight-turns.ts';
import { checkImprobableValues } from './improbable-values.ts';
import { checkJuniorNamed } from './junior-named.ts';
import { checkMassGiven } from './mass-given.ts';
import { checkMotorPlaces } from './motor-places.ts';
import { checkMotorRunWithinFlight } from './motor-run-within-flight.ts';
import { checkNamesReadable } from './names-readable.ts';
import { checkOneForEachMotor } from './one-for-each-motor.ts';
import { checkPartsWithinWhole } from './parts-within-whole.ts';
import { checkSetupNames } from './setup-names.ts';
import { checkSkeins } from './skeins.ts';
import { checkStabiliser } from './stabiliser.ts';
import { checkWatchesAgree } from './watches-agree.ts';
import { checkWingAgrees } from './wing-agrees.ts';

/** Every check of an entry by itself. A new check is one module and one line here. */
export const entryChecks: readonly EntryCheck[] = [
  checkBuildersOnce,
  checkJuniorNamed,
  checkMassGiven,
  checkPartsWithinWhole,
  checkStabiliser,
  checkWingAgrees,
  checkSkeins,
  checkEvenStrands,
  checkBreakTurnsAgree,
  checkMotorPlaces,
  checkSetupNames,
  checkFlightNumbers,
  checkFlightTimes,
  checkWatchesAgree,
  checkFlightSetups,
  checkFlightAfterSetup,
  checkOneForEachMotor,
  checkFlightTurns,
  checkMotorRunWithinFlight,
  checkImprobableValues,
  (_, source) => checkNamesReadable(source),
];
