import type { Annotation, Placing } from './annotation.ts';
import type { Label } from './label.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Sheet } from './sheet.ts';

/** The diameter of each kind of propeller, once, beside one of its discs: the outermost that has room. */
export function propellerLabels(
  { motors }: PlanShape,
  sheet: Sheet,
  labels: readonly (Label | null)[],
): Annotation[] {
  return labels.flatMap((label, kind): Annotation[] => {
    if (label === null) return [];
    const discs = motors
      .filter((motor) => motor.kind === kind && motor.radius !== null)
      .toSorted((one, other) => Math.abs(other.y) - Math.abs(one.y) || other.y - one.y);
    const placings = discs.flatMap(({ y, propeller, radius, faces }): Placing[] => {
      const hub = sheet.above({ x: propeller, y });
      const beyond = (radius ?? 0) * sheet.scale + 8;
      const off = faces === 'tractor' ? -13 : 22;
      const at = (x: number, level: number, anchor: 'start' | 'middle' | 'end'): Placing => ({
        place: { x, y: level, anchor },
        lines: '',
        room: null,
      });
      const right = at(hub.x + beyond, hub.y + 4, 'start');
      const left = at(hub.x - beyond, hub.y + 4, 'end');
      return [
        ...(y < 0 ? [left, right] : [right, left]),
        at(hub.x, hub.y + off, 'middle'),
        at(hub.x + beyond, hub.y + off, 'start'),
      ];
    });
    return [{ label, placings }];
  });
}
