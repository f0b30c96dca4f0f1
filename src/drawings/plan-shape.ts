import { type FigureSet, isPresent } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';
import { type FinShape, finShapes } from './fin-shape.ts';
import { type MotorShape, motorShapes } from './motor-shapes.ts';
import type { Note } from './note.ts';
import { type TailShape, tailShape } from './tail-shape.ts';
import { type WingShape, wingShape } from './wing-shape.ts';

/** The body: a stick on the centre line; metres. */
export interface StickShape {
  readonly front: number;
  readonly rear: number;
  /** The front end is a guess. */
  readonly assumed: boolean;
}

/** An aircraft in metres, as plain data that survives JSON. */
export interface PlanShape {
  readonly wing: WingShape;
  readonly tail: TailShape | null;
  readonly fins: readonly FinShape[];
  readonly stick: StickShape | null;
  readonly motors: readonly MotorShape[];
  /** How far behind the leading edge at the centre line the balance and the neutral point lie. */
  readonly balance: number | null;
  readonly neutralPoint: number | null;
  /** What was taken or left out because nobody measured it. */
  readonly notes: readonly Note[];
}

/** How far ahead of the wing the nose is drawn where nobody wrote it, in mean chords. Common practice, no source. */
const usualNose = 1;

/**
 * A design in metres. The figures give the mean chord of a wing without panels, the balance and the neutral point.
 * Null where nothing gives the wing a depth.
 */
export function planShape(design: Design, figures: FigureSet): PlanShape | null {
  const drawn = wingShape(design, figures);
  if (drawn === null) return null;
  const { wing } = drawn;
  const { tail, notes: ofTail } = tailShape(design, wing);
  const { fins, notes: ofFins } = finShapes(design, wing, tail);
  const nose = noseOf(design, wing, tail);
  const { motors, notes: ofMotors } = motorShapes(design, wing, nose);
  const pulled = motors.some(({ y, faces }) => y === 0 && faces === 'tractor');
  const stick = stickOf(design, wing, tail, fins, pulled, nose);
  const ofStick: Note[] = stick === null ? [] : stick.assumed ? ['stick', 'nose'] : ['stick'];
  return {
    wing,
    tail,
    fins,
    stick,
    motors,
    balance: onMeanChord(wing, figures, 'balance-point'),
    neutralPoint: onMeanChord(wing, figures, 'neutral-point'),
    notes: [...drawn.notes, ...ofTail, ...ofFins, ...ofStick, ...ofMotors],
  };
}

/** Where nose ballast can sit; else the front of a foreplane, else a guess. */
function noseOf(design: Design, wing: WingShape, tail: TailShape | null): number {
  if (design.nose !== null) return 0 - design.nose.value;
  return tail?.kind === 'foreplane' ? tail.leading : -usualNose * wing.mean.chord;
}

/** From the nose to the end of what lies furthest back; none where there is neither nose, tail nor a propeller at the nose. */
function stickOf(
  design: Design,
  wing: WingShape,
  tail: TailShape | null,
  fins: readonly FinShape[],
  pulled: boolean,
  nose: number,
): StickShape | null {
  if (tail === null && design.nose === null && !pulled) return null;
  const ends = [
    wing.sections[0]?.trailing ?? 0,
    ...(tail === null ? [] : [tail.leading, tail.leading + tail.chord]),
    ...fins.filter(({ y }) => y === 0).map(({ leading, chord }) => leading + chord),
  ];
  return {
    front: Math.min(nose, ...ends),
    rear: Math.max(...ends),
    assumed: design.nose === null && tail?.kind !== 'foreplane',
  };
}

function onMeanChord({ mean }: WingShape, figures: FigureSet, id: string): number | null {
  const share = figures.entry.get(id);
  return isPresent(share) ? mean.leadingEdge + share.value * mean.chord : null;
}
