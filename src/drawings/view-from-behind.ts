import type { Annotation, Placing } from './annotation.ts';
import type { Label } from './label.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import type { Sheet } from './sheet.ts';
import { linePath, path, tenth } from './svg-text.ts';

/** Whether there is anything to see from behind: a wing that is known to rise, or a disc. */
export function seenFromBehind({ wing, motors }: PlanShape): boolean {
  const rises = wing.dihedralKnown && wing.sections.some(({ z }) => z !== 0);
  return rises || motors.some(({ radius }) => radius !== null);
}

/** The wing as a line, from left tip to right tip, on paper. */
export function wingFromBehind({ wing }: PlanShape, { behind }: Sheet): Point[] {
  if (behind === null) return [];
  const right = wing.sections.map(({ y, z }) => behind(y, z));
  const left = wing.sections.map(({ y, z }) => behind(-y, z));
  return [...left.toReversed(), ...right];
}

/** Wing, discs and the way propellers turn, seen from behind: left is left, and clockwise is clockwise. */
export function viewFromBehind(shape: PlanShape, sheet: Sheet): string {
  const { behind, scale } = sheet;
  if (behind === null) return '';
  const wing = `M${wingFromBehind(shape, sheet)
    .map(({ x, y }) => `${tenth(x)} ${tenth(y)}`)
    .join('L')}`;
  const discs = shape.motors.map(({ y, z, radius, rotation, assumed }) => {
    const hub = behind(y, z);
    const peg = `<circle class="drawn-peg" cx="${tenth(hub.x)}" cy="${tenth(hub.y)}" r="2"/>`;
    if (radius === null) return peg;
    const reach = radius * scale;
    const circle = `<circle class="drawn-swept${assumed ? ' assumed' : ''}" cx="${tenth(hub.x)}" cy="${tenth(hub.y)}" r="${tenth(reach)}"/>`;
    return (
      circle + peg + (rotation === null || reach < 9 ? '' : turn(hub, reach * 0.7, rotation === 'clockwise'))
    );
  });
  const middle = behind(0, 0);
  const axis = linePath({ ...middle, y: middle.y - 16 }, { ...middle, y: middle.y + 16 });
  return (
    discs.join('') +
    path(shape.wing.assumed ? 'drawn-edge assumed' : 'drawn-edge', wing) +
    path('drawn-axis', axis)
  );
}

/** A sixth of a turn over the top, with its head. */
function turn({ x, y }: Point, radius: number, clockwise: boolean): string {
  const way = clockwise ? 1 : -1;
  const [across, up] = [radius / 2, radius * Math.sqrt(0.75)];
  const arc = `M${tenth(x - way * across)} ${tenth(y - up)}A${tenth(radius)} ${tenth(radius)} 0 0 ${clockwise ? 1 : 0} ${tenth(x + way * across)} ${tenth(y - up)}`;
  return path('drawn-turn', `${arc}m${-4 * way} 0.5l${4 * way} -0.5l${-1 * way} -4`);
}

/** The angle of each panel over its middle, on the left, else on the right. */
export function dihedralLabels(
  shape: PlanShape,
  { behind }: Sheet,
  labels: readonly (Label | null)[],
): Annotation[] {
  if (behind === null || !shape.wing.dihedralKnown) return [];
  return labels.flatMap((label, index): Annotation[] => {
    const inner = shape.wing.sections[2 * index];
    const outer = shape.wing.sections[2 * index + 1];
    if (label === null || inner === undefined || outer === undefined) return [];
    const [y, z] = [(inner.y + outer.y) / 2, (inner.z + outer.z) / 2];
    const places = [-1, 1].flatMap((side) =>
      [-9, 18].map((off) => {
        const { x, y: level } = behind(side * y, z);
        return { x, y: level + off, anchor: 'middle' } as const;
      }),
    );
    return [{ label, placings: places.map((place) => ({ place, lines: '', room: null })) }];
  });
}

/** What the view is, under a wing tip where there is room. */
export function behindLabel(shape: PlanShape, sheet: Sheet, text: string): Annotation[] {
  const { behind, paper, width } = sheet;
  if (behind === null) return [];
  const tip = shape.wing.sections.at(-1);
  const levels = [0, tip?.z ?? 0].map((z) => behind(0, z).y + 18);
  const placings = levels.flatMap((y): Placing[] => [
    { place: { x: paper.sides, y, anchor: 'start' }, lines: '', room: null },
    { place: { x: width - paper.sides, y, anchor: 'end' }, lines: '', room: null },
  ]);
  return [{ label: { metric: text, imperial: text }, placings }];
}
