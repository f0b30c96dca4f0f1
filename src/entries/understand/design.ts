import type { Design, LogReference, Motor, Propeller, Skein } from '../../model/design.ts';
import type { EntryFields } from './setup-designs.ts';

/** The fields of a whole design, as an entry gives them or as a setup leaves them. */
export type DesignFields = Pick<
  EntryFields,
  | 'control'
  | 'onboard'
  | 'origin'
  | 'layout'
  | 'wing'
  | 'tailplane'
  | 'fin'
  | 'balance'
  | 'nose'
  | 'mass'
  | 'structure'
  | 'trim'
  | 'motors'
>;

/** What the fields of a design mean. A layout not stated is tail-aft; fins not counted are one. */
export function understandDesign(fields: DesignFields): Design {
  const { wing, tailplane, fin, mass, trim } = fields;
  return {
    control: fields.control,
    onboard: fields.onboard ?? [],
    origin: fields.origin ?? null,
    layout: fields.layout ?? 'tail-aft',
    wing: {
      span: wing.span,
      panels:
        wing.panels?.map((panel) => ({
          length: panel.length,
          root: panel.root,
          tip: panel.tip,
          sweep: panel.sweep ?? null,
          dihedral: panel.dihedral ?? null,
        })) ?? null,
      area: wing.area ?? null,
      chord: wing.chord ?? null,
      incidence: wing.incidence ?? null,
      section: wing.section ?? null,
    },
    tailplane:
      tailplane === undefined
        ? null
        : {
            span: tailplane.span ?? null,
            area: tailplane.area ?? null,
            arm: tailplane.arm ?? null,
            incidence: tailplane.incidence ?? null,
          },
    fin: fin === undefined ? null : { area: fin.area ?? null, arm: fin.arm ?? null, count: fin.count ?? 1 },
    balance: fields.balance ?? null,
    nose: fields.nose ?? null,
    mass: { airframe: mass.airframe ?? null, flying: mass.flying ?? null, parts: mass.parts ?? {} },
    structure: fields.structure ?? {},
    trim:
      trim === undefined
        ? null
        : {
            turn: trim.turn ?? null,
            downThrust: trim['down-thrust'] ?? null,
            sideThrust: trim['side-thrust'] ?? null,
            warps: trim.warps ?? null,
          },
    motors: fields.motors.map(understandMotor),
    inspected: null,
  };
}

type MotorFields = EntryFields['motors'][number];

function understandMotor(fields: MotorFields): Motor {
  return {
    count: fields.count,
    rotation: fields.rotation ?? null,
    at: fields.at ?? null,
    side: fields.side ?? null,
    faces: fields.faces ?? null,
    hooks: fields.hooks ?? null,
    skein: fields.skein === undefined ? null : understandSkein(fields.skein),
    breakTurns: fields['break-turns'] ?? [],
    propeller: fields.propeller === undefined ? null : understandPropeller(fields.propeller),
    thrustLog: understandLog(fields['thrust-log']),
    torqueLog: understandLog(fields['torque-log']),
  };
}

function understandSkein(fields: NonNullable<MotorFields['skein']>): Skein {
  return {
    strip: fields.strip ?? null,
    strands: fields.strands ?? null,
    length: fields.length ?? null,
    mass: fields.mass ?? null,
    batch: fields.batch ?? null,
    braided: fields.braided ?? null,
    lubricant: fields.lubricant ?? null,
    brokenIn: fields['broken-in'] ?? null,
  };
}

function understandPropeller(fields: NonNullable<MotorFields['propeller']>): Propeller {
  return {
    diameter: fields.diameter ?? null,
    pitch: fields.pitch ?? null,
    blades: fields.blades ?? null,
    after: fields.after ?? null,
  };
}

function understandLog(written: MotorFields['thrust-log']): LogReference | null {
  if (written === undefined) return null;
  if (typeof written === 'string') return { file: written, turns: null };
  return { file: written.file, turns: written.turns ?? null };
}
