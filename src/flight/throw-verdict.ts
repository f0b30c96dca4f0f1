import type { Behaviour } from '../model/entry.ts';

/** What one glide or flight tells of the trim. */
export type ThrowVerdict = 'fine' | 'tail-heavy' | 'nose-heavy' | 'left' | 'right' | 'rolled' | 'disturbed';

/**
 * What the behaviour of a throw says. Nose up and stalled: tail-heavy. Nose down: nose-heavy. A spiral says which way the
 * turn is too tight, a roll that one wing gives way. Common practice, no source.
 *
 * Clean alone is fine. A gust says nothing, and what the model did in one was perhaps the gust: throw again. A dive after
 * a stall is how a stall ends, so both together are a stall. Empty where the behaviour was not stated.
 */
export function throwVerdicts(behaviour: readonly Behaviour[]): readonly ThrowVerdict[] {
  const saw = new Set(behaviour);
  if (saw.size === 0) return [];
  if (saw.has('gust')) return ['disturbed'];
  const verdicts: ThrowVerdict[] = [];
  if (saw.has('stalled')) verdicts.push('tail-heavy');
  else if (saw.has('dived')) verdicts.push('nose-heavy');
  if (saw.has('spiralled-left')) verdicts.push('left');
  if (saw.has('spiralled-right')) verdicts.push('right');
  if (saw.has('rolled')) verdicts.push('rolled');
  return verdicts.length === 0 ? ['fine'] : verdicts;
}
