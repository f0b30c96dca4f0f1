import { type Glider, minimumSink, type SteadyGlide } from '../flight/polar.ts';
import { discArea, propellerDrag } from '../flight/propeller-drag.ts';
import type { AfterRun } from '../model/design.ts';
import { readAir } from './air-readings.ts';
import type { DefaultId } from './defaults.ts';
import type { Reader } from './definition.ts';
import { numberedMotors, type Subject } from './subject.ts';

/** What a glide is worked out of that can be measured: mass, wing and air. */
export type Body = Omit<Glider, 'plateFactor' | 'fixedDrag' | 'spanEfficiency' | 'usableLift'>;

/** The model as it glides, without any assumption about its drag. */
export function readBody(from: Reader, subject: Subject): Body {
  return {
    mass: from.figure('flying-mass'),
    wingArea: from.figure('wing-area'),
    chord: from.figure('mean-aerodynamic-chord'),
    aspectRatio: from.figure('aspect-ratio'),
    ...readAir(from, subject),
  };
}

/** The glide that sinks slowest as the polar has it, with its lift coefficient. */
export function readPolarGlide(from: Reader, subject: Subject): SteadyGlide {
  const body = readBody(from, subject);
  return minimumSink({
    ...body,
    plateFactor: from.assume('profile-drag-factor'),
    fixedDrag: from.assume('parasite-drag') + readPropellerDrag(from, subject, body.wingArea),
    spanEfficiency: from.assume('span-efficiency'),
    usableLift: from.assume('usable-lift'),
  });
}

/** The drag of a propeller that turns until the landing lies in the power it takes, not in the glide. */
const dragAfterRun: Readonly<Record<Exclude<AfterRun, 'never-stops'>, DefaultId>> = {
  folds: 'propeller-drag-folded',
  freewheels: 'propeller-drag-freewheeling',
  stops: 'propeller-drag-stopped',
};

/** What all propellers add to the drag coefficient on the wing's area. */
function readPropellerDrag(from: Reader, subject: Subject, wingArea: number): number {
  let drag = 0;
  let withoutDiameter = false;
  for (const { motor, suffix } of numberedMotors(subject.design)) {
    const after = motor.propeller?.after ?? null;
    const diameter = motor.propeller?.diameter ?? null;
    if (after === 'never-stops') continue;
    if (diameter === null) {
      withoutDiameter = true;
      continue;
    }
    const discs =
      from.count(motor.count, 'motors') * discArea(from.value(diameter, `the propeller's diameter${suffix}`));
    const coefficient = from.assume(after === null ? 'propeller-drag-unknown' : dragAfterRun[after]);
    drag += propellerDrag(coefficient, discs, wingArea);
  }
  return withoutDiameter ? drag + from.assume('propeller-drag-without-diameter') : drag;
}
