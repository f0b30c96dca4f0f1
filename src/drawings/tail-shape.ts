import type { Design, Tailplane } from '../model/design.ts';
import type { Note } from './note.ts';
import { mirrored, type Point } from './point.ts';
import { quarterChord, type WingShape } from './wing-shape.ts';

/** The second surface: a rectangle of its span and mean chord; metres. */
export interface TailShape {
  readonly kind: 'tailplane' | 'foreplane' | 'second-wing';
  readonly span: number;
  readonly chord: number;
  /** Where its leading edge lies. */
  readonly leading: number;
  /** Its size or its place is a guess. */
  readonly assumed: boolean;
}

/** Span over chord of a surface of which only one of span and area is known. Common practice, no source. */
const usualAspect = 4;

/** Arm over the wing's span where nobody wrote the arm. Common practice, no source. */
const usualArm = 0.45;

/** The surface of `tailplane` where the layout has it: ahead of the wing on a canard, behind it otherwise. */
export function tailShape(
  { tailplane, layout, wing: { span } }: Design,
  wing: WingShape,
): { readonly tail: TailShape | null; readonly notes: readonly Note[] } {
  if (layout === 'tailless') return { tail: null, notes: [] };
  const size = tailplane === null ? null : sizeOf(tailplane);
  if (tailplane === null || size === null) return { tail: null, notes: ['tail-left-out'] };
  const written = tailplane.arm === null ? 0 : Math.abs(tailplane.arm.value);
  const arm = written > 0 ? written : usualArm * span.value;
  const notes: Note[] = [size.assumed ? 'tail-proportions' : 'tail-rectangle'];
  if (!(written > 0)) notes.push('tail-arm');
  const quarter = quarterChord(wing) + (layout === 'canard' ? -arm : arm);
  return {
    tail: {
      kind: layout === 'canard' ? 'foreplane' : layout === 'tandem' ? 'second-wing' : 'tailplane',
      span: size.span,
      chord: size.chord,
      leading: quarter - size.chord / 4,
      assumed: size.assumed || !(written > 0),
    },
    notes,
  };
}

function sizeOf({ span, area }: Tailplane): { span: number; chord: number; assumed: boolean } | null {
  const wide = span !== null ? span.value : Math.sqrt((area?.value ?? 0) * usualAspect);
  const chord = area === null ? wide / usualAspect : area.value / wide;
  if (!(wide > 0 && chord > 0 && Number.isFinite(chord))) return null;
  return { span: wide, chord, assumed: span === null || area === null };
}

/** Its outline from above, closed by its last point. */
export function tailOutline({ span, chord, leading }: TailShape): Point[] {
  const y = span / 2;
  return mirrored([
    { x: leading, y },
    { x: leading + chord, y },
  ]);
}
