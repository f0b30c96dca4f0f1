import { type MeanAerodynamicChord, meanAerodynamicChord, type PlanformPanel } from '../airframe/planform.ts';
import { type FigureSet, isPresent } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';
import type { Note } from './note.ts';
import { mirrored, type Point } from './point.ts';

/** A chord of the right half: how far out, how high above the centre line's, and where its edges lie; metres. */
export interface WingSection {
  readonly y: number;
  readonly z: number;
  readonly leading: number;
  readonly trailing: number;
}

/** A wing, by the chords at both ends of its panels, from the centre line outwards. */
export interface WingShape {
  readonly sections: readonly WingSection[];
  readonly mean: MeanAerodynamicChord;
  /** Its outline is a guess: a rectangle of span and mean chord. */
  readonly assumed: boolean;
  /** Somebody wrote at least one dihedral. */
  readonly dihedralKnown: boolean;
}

/** How far panels and span may differ before a drawing says so: the readers of entries are warned beyond the same 2 %. */
const spanTolerance = 0.02;

/** The wing in metres, with what was taken for it; null where neither panels nor a mean chord give it a depth. */
export function wingShape(
  { wing }: Design,
  figures: FigureSet,
): { readonly wing: WingShape; readonly notes: readonly Note[] } | null {
  const written = wing.panels ?? [];
  const span = wing.span.value;
  const assumed = written.length === 0;
  const panels: PlanformPanel[] = assumed
    ? straight(span, figures)
    : written.map(({ length, root, tip, sweep, dihedral }) => ({
        length: length.value,
        root: root.value,
        tip: tip.value,
        sweep: sweep?.value ?? 0,
        dihedral: dihedral?.value ?? 0,
      }));
  const mean = meanAerodynamicChord(panels);
  if (![mean.chord, mean.leadingEdge, mean.station].every(Number.isFinite) || mean.chord <= 0) return null;
  const sections = sectionsOf(panels);
  const reach = Math.max(...sections.map(({ y }) => y));
  if (!(reach > 0)) return null;
  const dihedralKnown = written.some(({ dihedral }) => dihedral !== null);
  const notes: Note[] = [];
  if (assumed) notes.push('straight-wing');
  if (written.some(({ sweep }) => sweep === null)) notes.push('straight-leading-edge');
  if (!assumed && Math.abs((2 * reach) / span - 1) > spanTolerance) notes.push('panels-miss-span');
  if (!dihedralKnown) notes.push('level-wing');
  return { wing: { sections, mean, assumed, dihedralKnown }, notes };
}

function straight(span: number, figures: FigureSet): PlanformPanel[] {
  const chord = figures.entry.get('mean-chord');
  if (!isPresent(chord)) return [];
  return [{ length: span / 2, root: chord.value, tip: chord.value, sweep: 0, dihedral: 0 }];
}

function sectionsOf(panels: readonly PlanformPanel[]): WingSection[] {
  let here = { y: 0, z: 0, leading: 0 };
  return panels.flatMap(({ length, root, tip, sweep, dihedral }) => {
    const inner = { ...here, trailing: here.leading + root };
    here = {
      y: here.y + length * Math.cos(dihedral),
      z: here.z + length * Math.sin(dihedral),
      leading: here.leading + sweep,
    };
    return [inner, { ...here, trailing: here.leading + tip }];
  });
}

/** The outline from above, closed by its last point. */
export function wingOutline({ sections }: WingShape): Point[] {
  const leading = sections.map(({ y, leading: x }) => ({ x, y }));
  const trailing = sections.map(({ y, trailing: x }) => ({ x, y }));
  return mirrored(withoutRepeats([...leading, ...trailing.toReversed()]));
}

/** Chords at which panels meet, on the right half; the widest where two meet in a step. */
export function wingJoints({ sections }: WingShape): readonly (readonly [Point, Point])[] {
  const joints: [Point, Point][] = [];
  for (let index = 1; index + 1 < sections.length; index += 2) {
    const [inner, outer] = [sections[index], sections[index + 1]];
    if (inner === undefined || outer === undefined) continue;
    const { y, leading } = inner;
    joints.push([
      { x: leading, y },
      { x: Math.max(inner.trailing, outer.trailing), y },
    ]);
  }
  return joints;
}

/** The chord at a distance from the centre line, on either side; beyond the tip that of the tip. */
export function sectionAt({ sections }: WingShape, distance: number): WingSection {
  const out = Math.abs(distance);
  const last = sections.at(-1) ?? { y: 0, z: 0, leading: 0, trailing: 0 };
  for (let index = 0; index + 1 < sections.length; index += 2) {
    const [inner, outer] = [sections[index], sections[index + 1]];
    if (inner === undefined || outer === undefined || out > outer.y || outer.y === inner.y) continue;
    const share = (out - inner.y) / (outer.y - inner.y);
    const between = (a: number, b: number) => a + share * (b - a);
    return {
      y: out,
      z: between(inner.z, outer.z),
      leading: between(inner.leading, outer.leading),
      trailing: between(inner.trailing, outer.trailing),
    };
  }
  return last;
}

/** Where the quarter-chord of the mean chord lies: the wing's end of every arm. */
export function quarterChord({ mean }: WingShape): number {
  return mean.leadingEdge + mean.chord / 4;
}

function withoutRepeats(points: readonly Point[]): Point[] {
  return points.filter(({ x, y }, index) => {
    const before = points[index - 1];
    return before === undefined || before.x !== x || before.y !== y;
  });
}
