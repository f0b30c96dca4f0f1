import type { Batch } from '../../model/batch.ts';
import { checkImprobableValues } from '../check/improbable-values.ts';
import { usualCalibration } from '../logs/read-log.ts';
import type { Problem } from '../problems/problem.ts';
import { batch as schema } from '../schema/batch.ts';
import type { SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';

/**
 * What a batch of rubber means, in SI. Its logs are files of their own: until they are read, the tests have no points.
 * Null where anything is wrong with the file.
 */
export function understandBatch(
  source: SourceDocument,
  { id }: { readonly id: string },
): { readonly batch: Batch | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems: ofFields } = readFields(source, schema);
  const problems = [...ofFields, ...checkImprobableValues(draft, source)];
  if (complete === null) return { batch: null, problems };
  const batch: Batch = {
    id,
    label: complete.label,
    strip: complete.strip ?? null,
    density: complete.density ?? null,
    made: complete.made ?? null,
    stretchTests: (complete['stretch-tests'] ?? []).map((test) => ({
      file: test.file,
      length: test.length,
      mass: test.mass,
      temperature: test.temperature ?? null,
      cycle: test.cycle ?? null,
      broke: test.broke ?? false,
      by: test.by ?? null,
      date: test.date ?? null,
      points: null,
      calibration: usualCalibration,
    })),
    torqueTests: (complete['torque-tests'] ?? []).map((test) => ({
      file: test.file,
      strands: test.strands ?? null,
      length: test.length,
      mass: test.mass,
      cycle: test.cycle ?? null,
      points: null,
      calibration: usualCalibration,
    })),
    formerly: complete.formerly ?? [],
    body: source.body,
  };
  return { batch, problems };
}
