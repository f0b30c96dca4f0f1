import type { Challenge } from '../../model/challenge.ts';
import type { FrozenResult } from './frozen.ts';

/** The target that stood when the result was frozen; that of today where the result does not tell. */
export function targetWhenFrozen({ target }: Challenge, frozen: FrozenResult): Challenge['target'] {
  const time = frozen.challenge.target;
  if (time === undefined) return target;
  return time === null ? null : { time, label: target?.label ?? null };
}
