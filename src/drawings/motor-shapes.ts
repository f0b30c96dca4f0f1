import type { Design, Motor, Rotation } from '../model/design.ts';
import type { Note } from './note.ts';
import { sectionAt, type WingShape } from './wing-shape.ts';

/** A motor from its propeller to its rear hook; metres. */
export interface MotorShape {
  /** Which item of the motors it is of, from 0. */
  readonly kind: number;
  readonly y: number;
  readonly z: number;
  readonly propeller: number;
  /** The other end of the skein; null where the hooks' spacing is not known. */
  readonly hook: number | null;
  /** Of the propeller's disc; null where its diameter is not known. */
  readonly radius: number | null;
  readonly faces: 'tractor' | 'pusher';
  readonly rotation: Rotation | null;
  /** Its distance from the centre line is a guess. */
  readonly assumed: boolean;
}

/** How far off the wing's edge a propeller is drawn, in local chords. Nobody writes it; common practice, no source. */
const usualGap = 0.2;

/**
 * Every motor whose place is known. A tractor's propeller stands ahead of the leading edge, on the centre line at the
 * nose; a pusher's behind the trailing edge. The skein runs from it over the wing.
 */
export function motorShapes(
  design: Design,
  wing: WingShape,
  nose: number,
): { readonly motors: readonly MotorShape[]; readonly notes: readonly Note[] } {
  const notes = new Set<Note>();
  const motors = design.motors.flatMap((motor, kind) => {
    const { places, assumed } = placesOf(motor);
    if (places.length < motor.count && motor.count % Math.max(1, places.length) !== 0)
      notes.add('motors-left-out');
    else if (places.length === 0) notes.add('motors-left-out');
    else if (places.length < motor.count) notes.add('motors-share-places');
    if (places.length === 0) return [];
    const diameter = motor.propeller?.diameter?.value ?? 0;
    if (assumed) notes.add('motor-on-centre-line');
    if (motor.faces === null) notes.add('facing');
    if (motor.hooks === null) notes.add('hooks-unknown');
    if (!(diameter > 0)) notes.add('propeller-unknown');
    const faces = motor.faces ?? 'tractor';
    return places.map((y): MotorShape => {
      const { z, leading, trailing } = sectionAt(wing, y);
      const gap = usualGap * (trailing - leading);
      const atNose = faces === 'tractor' && y === 0;
      notes.add(atNose ? 'propeller-at-the-nose' : 'propellers-off-the-wing');
      const propeller = atNose ? nose : faces === 'tractor' ? leading - gap : trailing + gap;
      const run = motor.hooks === null ? null : faces === 'tractor' ? motor.hooks.value : -motor.hooks.value;
      return {
        kind,
        y,
        z,
        propeller,
        hook: run === null ? null : propeller + run,
        radius: diameter > 0 ? diameter / 2 : null,
        faces,
        rotation: motor.rotation,
        assumed,
      };
    });
  });
  return { motors, notes: [...notes] };
}

/**
 * Distances to the right. A written distance is a place on both sides unless the side is written; zero is one place. A
 * single motor without a place is taken to be on the centre line, several have none.
 */
function placesOf({ count, at, side }: Motor): { places: readonly number[]; assumed: boolean } {
  const written = (at ?? []).flatMap(({ value }) =>
    value === 0 ? [0] : side === 'left' ? [-value] : side === 'right' ? [value] : [-value, value],
  );
  if (written.length > count) return { places: [], assumed: false };
  if (written.length > 0) return { places: written, assumed: false };
  return { places: count === 1 ? [0] : [], assumed: true };
}
