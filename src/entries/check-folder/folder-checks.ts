import { builderDiffers } from './builder-differs.ts';
import { evidenceNotSeen } from './evidence-not-seen.ts';
import { evidenceOnce } from './evidence-once.ts';
import type { FolderCheck } from './folder-check.ts';
import { formerNameTaken } from './former-name-taken.ts';
import { noAddress } from './no-address.ts';
import { ruledBeforeFlight } from './ruled-before-flight.ts';
import { ruledByBuilder } from './ruled-by-builder.ts';
import { siteFileMissing } from './site-file-missing.ts';
import { stripOfBatch } from './strip-of-batch.ts';
import { unknownBatch } from './unknown-batch.ts';
import { unknownChallenge } from './unknown-challenge.ts';
import { unknownEntry } from './unknown-entry.ts';
import { unknownFlight } from './unknown-flight.ts';
import { unknownReference } from './unknown-reference.ts';
import { unknownRound } from './unknown-round.ts';
import { unusedFile } from './unused-file.ts';

/** All rules between files. A new one is a file of its own and a line here. */
export const folderChecks: readonly FolderCheck[] = [
  siteFileMissing,
  noAddress,
  unknownChallenge,
  unknownEntry,
  unknownFlight,
  ruledByBuilder,
  ruledBeforeFlight,
  evidenceNotSeen,
  unknownBatch,
  unknownReference,
  unknownRound,
  stripOfBatch,
  builderDiffers,
  evidenceOnce,
  formerNameTaken,
  unusedFile,
];
