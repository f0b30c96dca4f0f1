import { stripOfBatch } from '../../entries/check-folder/strip-of-batch.ts';
import { unknownBatch } from '../../entries/check-folder/unknown-batch.ts';
import { unknownRound } from '../../entries/check-folder/unknown-round.ts';
import { type Checked, withProblems } from './checked.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';

/** What `check` says of an entry beside the rubber and the rounds of its site, in addition. */
export function checkedBesideSite(
  now: Checked,
  { batches }: Pick<EnterSite, 'batches'>,
  challenge: Pick<EnterChallenge, 'id' | 'rules'> | null,
): Checked {
  const { source, entry } = now;
  if (source === null) return now;
  const there = { batches: new Set(batches.map(({ id }) => id)) };
  const strips = batches.map((value) => ({ value }));
  return withProblems(now, [
    ...unknownBatch.check({ entries: [{ source }], there }),
    ...(challenge === null
      ? []
      : unknownRound.check({
          entries: [{ value: { challenge: challenge.id }, source }],
          challenges: [{ value: challenge.rules }],
        })),
    ...(entry === null ? [] : stripOfBatch.check({ entries: [{ value: entry, source }], batches: strips })),
  ]);
}
