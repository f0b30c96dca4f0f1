import type { Design } from '../model/design.ts';
import type { Note } from './note.ts';
import type { TailShape } from './tail-shape.ts';
import { quarterChord, type WingShape } from './wing-shape.ts';

/** A fin from above: a chord on edge; metres. */
export interface FinShape {
  readonly y: number;
  readonly leading: number;
  readonly chord: number;
}

/** Height over chord of a fin of which the area is known. Common practice, no source. */
const usualAspect = 1.5;

/** Fins at their arm. Several are spread over the surface they are nearest to, from tip to tip. */
export function finShapes(
  { fin }: Design,
  wing: WingShape,
  tail: TailShape | null,
): { readonly fins: readonly FinShape[]; readonly notes: readonly Note[] } {
  if (fin === null) return { fins: [], notes: [] };
  const { area, arm, count } = fin;
  const chord = Math.sqrt((area?.value ?? 0) / count / usualAspect);
  const wingQuarter = quarterChord(wing);
  const tailQuarter = tail === null ? null : tail.leading + tail.chord / 4;
  const behind = tail !== null && tail.kind !== 'foreplane' ? tailQuarter : null;
  const quarter = arm === null ? behind : wingQuarter + arm.value;
  if (!(chord > 0 && Number.isFinite(chord)) || quarter === null)
    return { fins: [], notes: ['fin-left-out'] };
  const onTail = tailQuarter !== null && Math.abs(quarter - tailQuarter) < Math.abs(quarter - wingQuarter);
  const half = onTail && tail !== null ? tail.span / 2 : Math.max(...wing.sections.map(({ y }) => y));
  const notes: Note[] = ['fin-proportions'];
  if (arm === null) notes.push('fin-arm');
  if (count > 1) notes.push('fin-places');
  const fins = Array.from({ length: count }, (_, index) => ({
    y: count === 1 ? 0 : -half + (2 * half * index) / (count - 1),
    leading: quarter - chord / 4,
    chord,
  }));
  return { fins, notes };
}
