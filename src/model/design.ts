import type { Quantity } from '../quantities/quantity.ts';

export type Control = 'free' | 'guided';
export type Onboard = 'release' | 'dethermaliser' | 'locator' | 'altimeter' | 'stabiliser';
export type OriginOfDesign = 'own' | 'plan' | 'kit';
export type Layout = 'tail-aft' | 'canard' | 'tandem' | 'tailless';
export type Rotation = 'clockwise' | 'anticlockwise';
export type AfterRun = 'folds' | 'freewheels' | 'stops' | 'never-stops';

/** One half of the wing is a row of panels, from the centre line outwards. */
export interface Panel {
  /** Along the panel; its projected span is length × cos dihedral. */
  readonly length: Quantity;
  readonly root: Quantity;
  readonly tip: Quantity;
  /** How far the tip's leading edge lies behind the root's. */
  readonly sweep: Quantity | null;
  /** Against the horizontal. */
  readonly dihedral: Quantity | null;
}

export interface Wing {
  readonly span: Quantity;
  readonly panels: readonly Panel[] | null;
  readonly area: Quantity | null;
  /** Mean chord. */
  readonly chord: Quantity | null;
  readonly incidence: Quantity | null;
  readonly section: string | null;
}

export interface Tailplane {
  readonly span: Quantity | null;
  readonly area: Quantity | null;
  /** Wing quarter-chord to tail quarter-chord. */
  readonly arm: Quantity | null;
  readonly incidence: Quantity | null;
}

export interface Fin {
  /** Of all fins together. */
  readonly area: Quantity | null;
  readonly arm: Quantity | null;
  readonly count: number;
}

/** Airframe: ready to fly, without rubber. Flying: with it. One of the two is always there. */
export interface Mass {
  readonly airframe: Quantity | null;
  readonly flying: Quantity | null;
  readonly parts: Readonly<Record<string, Quantity>>;
}

export interface Strip {
  readonly width: Quantity;
  readonly thickness: Quantity;
}

/** The made-up rubber of one motor. */
export interface Skein {
  readonly strip: Strip | null;
  readonly strands: number | null;
  /** Made up, slack, untwisted, end to end. */
  readonly length: Quantity | null;
  readonly mass: Quantity | null;
  /** Slug of a file in content/rubber. */
  readonly batch: string | null;
  readonly braided: boolean | null;
  readonly lubricant: string | null;
  readonly brokenIn: string | null;
}

export interface Propeller {
  readonly diameter: Quantity | null;
  /** A pitch, or the blade angle at a radius. */
  readonly pitch: Quantity | { readonly angle: Quantity; readonly at: Quantity } | null;
  readonly blades: number | null;
  readonly after: AfterRun | null;
}

/** One kind of motor; `count` of them are on the model. */
export interface Motor {
  readonly count: number;
  readonly rotation: Rotation | null;
  /** Distances from the centre line. */
  readonly at: readonly Quantity[] | null;
  readonly side: 'left' | 'right' | null;
  readonly faces: 'tractor' | 'pusher' | null;
  readonly hooks: Quantity | null;
  readonly skein: Skein | null;
  /** Turns at which ones like it broke; empty where none was tested. */
  readonly breakTurns: readonly Quantity[];
  readonly propeller: Propeller | null;
  readonly thrustLog: LogReference | null;
  readonly torqueLog: LogReference | null;
}

export interface LogReference {
  /** A plain file name in the entry's own folder. */
  readonly file: string;
  readonly turns: Quantity | null;
}

export interface Trim {
  readonly turn: string | null;
  readonly downThrust: Quantity | null;
  /** Right positive. */
  readonly sideThrust: Quantity | null;
  readonly warps: string | null;
}

/** What an official measured; stands instead of the builder's own value. */
export interface Inspected {
  readonly span: Quantity | null;
  readonly wingArea: Quantity | null;
  readonly airframe: Quantity | null;
  /** All rubber of the model together. */
  readonly rubber: Quantity | null;
  readonly balance: Quantity | null;
}

/** A whole aircraft as it is in one setup. Absent facts are null. */
export interface Design {
  readonly control: Control;
  readonly onboard: readonly Onboard[];
  readonly origin: OriginOfDesign | null;
  readonly layout: Layout;
  readonly wing: Wing;
  readonly tailplane: Tailplane | null;
  readonly fin: Fin | null;
  /** Behind the leading edge at the centre line (length), or a share of the mean aerodynamic chord (share). */
  readonly balance: Quantity | null;
  /** How far ahead of that leading edge nose ballast can sit. */
  readonly nose: Quantity | null;
  readonly mass: Mass;
  readonly structure: Readonly<Record<string, string>>;
  readonly trim: Trim | null;
  readonly motors: readonly Motor[];
  readonly inspected: Inspected | null;
}
