import type { Quantity } from '../quantities/quantity.ts';

/**
 * A number used only where nothing was measured. It is a base input like any other, with its own uncertainty. One whose
 * origin is `exact` is named where it is used, but does not make a figure assumed.
 */
export interface Default {
  /** SI. */
  readonly quantity: Quantity;
  /** What a list of shares of uncertainty calls it. */
  readonly name: string;
  /** As an assumption in plain words. */
  readonly assumption: string;
  readonly why: string;
}

export type DefaultId = keyof typeof defaults;

/** A table of defaults; tests draw from it, and other assumptions may be tried with another one. */
export type Defaults = Readonly<Record<DefaultId, Default>>;

/** Every default there is; figures read them by id. */
export const defaults = {
  'rubber-density': {
    quantity: { kind: 'density', value: 930, u: 20, origin: 'assumed', written: '' },
    name: 'the density of rubber in general',
    assumption: 'rubber has a density of 0.93 ± 0.02 g/cm³',
    why: 'Natural rubber has 0.93 g/cm³ (handbook), vulcanised gum sheet 0.95 (data sheet).',
  },
  'break-energy': {
    quantity: { kind: 'specific-energy', value: 12_000, u: 2_000, origin: 'assumed', written: '' },
    name: 'the energy that rubber in general gives back',
    assumption: 'wound to break, rubber gives back 12 ± 2 J/g',
    why: 'Reported figures for contest-grade strip run from 9 to 14.4 J/g, most of them 11.8–12.9.',
  },
  'break-stretch': {
    quantity: { kind: 'number', value: 7.6, u: 0.5, origin: 'assumed', written: '' },
    name: 'the stretch at which rubber in general breaks',
    assumption: 'rubber breaks at 7.6 ± 0.5 times its length',
    why: 'The last point of Treloar 1944.',
  },
  'turns-constant': {
    quantity: { kind: 'number', value: 10.6, u: 1.2, origin: 'assumed', written: '' },
    name: 'the constant of the break turns',
    assumption: 'the skein breaks at (10.6 ± 1.2) · length / √section turns',
    why: 'Breaking turns are C·L/√A; practice finds a C of 9 to 13.',
  },
  'wound-share': {
    quantity: { kind: 'share', value: 0.9, u: 0.05, origin: 'assumed', written: '' },
    name: 'the share of the break turns wound in general',
    assumption: 'the motor was wound to 90 ± 5 % of its break turns',
    why: 'Common practice, for a flight that does not state its turns.',
  },
  'efficiency-of-one': {
    quantity: { kind: 'share', value: 0.65, u: 0.1, origin: 'assumed', written: '' },
    name: 'the efficiency of a single propeller',
    assumption: 'a single propeller turns 65 ± 10 % of the energy into height',
    why: 'Small propellers at low speed: measured peaks of 0.63 to 0.69 (UIUC Propeller Data Site, DA4002 at 2000 to 5000 turns a minute).',
  },
  'efficiency-of-several': {
    quantity: { kind: 'share', value: 0.5, u: 0.15, origin: 'assumed', written: '' },
    name: 'the efficiency of several propellers',
    assumption: 'several propellers turn 50 ± 15 % of the energy into height',
    why: 'As of a single one, less what small propellers, their mutual wakes and motors that run down one after another take. Weak.',
  },
  'profile-drag-factor': {
    quantity: { kind: 'number', value: 1.3, u: 0.3, origin: 'assumed', written: '' },
    name: 'the profile drag of wings in general',
    assumption: 'the profile drag is 1.3 ± 0.3 times that of a laminar flat plate',
    why: 'A laminar plate (Blasius), both sides, with allowance for thickness and separation.',
  },
  'parasite-drag': {
    quantity: { kind: 'number', value: 0.012, u: 0.006, origin: 'assumed', written: '' },
    name: 'the drag of fuselage and tail in general',
    assumption: 'fuselage and tail have a drag coefficient of 0.012 ± 0.006 on the wing area',
    why: 'Stick fuselage and tail; order of magnitude from practice.',
  },
  'propeller-drag-folded': {
    quantity: { kind: 'number', value: 0.005, u: 0.003, origin: 'assumed', written: '' },
    name: 'the drag of folded propellers',
    assumption: 'a folded propeller has a drag coefficient of 0.005 ± 0.003 on its disc area',
    why: 'Weak; order of magnitude from practice.',
  },
  'propeller-drag-freewheeling': {
    quantity: { kind: 'number', value: 0.02, u: 0.015, origin: 'assumed', written: '' },
    name: 'the drag of freewheeling propellers',
    assumption: 'a freewheeling propeller has a drag coefficient of 0.02 ± 0.015 on its disc area',
    why: 'Weak; order of magnitude from practice.',
  },
  'propeller-drag-stopped': {
    quantity: { kind: 'number', value: 0.03, u: 0.02, origin: 'assumed', written: '' },
    name: 'the drag of stopped propellers',
    assumption: 'a stopped propeller has a drag coefficient of 0.03 ± 0.02 on its disc area',
    why: 'Weak; order of magnitude from practice.',
  },
  'propeller-drag-unknown': {
    quantity: { kind: 'number', value: 0.01, u: 0.01, origin: 'assumed', written: '' },
    name: 'the drag of propellers that do not say what they do after the run',
    assumption:
      'a propeller that does not say whether it folds has a drag coefficient of 0.01 ± 0.01 on its disc area',
    why: 'Between folded and freewheeling.',
  },
  'propeller-drag-without-diameter': {
    quantity: { kind: 'number', value: 0.01, u: 0.008, origin: 'assumed', written: '' },
    name: 'the drag of propellers of unknown size',
    assumption:
      'propellers without a diameter have a drag coefficient of 0.01 ± 0.008 on the wing area, all together',
    why: 'Weak; order of magnitude from practice.',
  },
  'span-efficiency': {
    quantity: { kind: 'number', value: 0.8, u: 0.08, origin: 'assumed', written: '' },
    name: 'the span efficiency of wings in general',
    assumption: 'the span efficiency is 0.80 ± 0.08',
    why: 'Straight and bent wings with attached flow; common practice.',
  },
  'usable-lift': {
    quantity: { kind: 'number', value: 1, u: 0.1, origin: 'assumed', written: '' },
    name: 'the lift coefficient that can be flown in general',
    assumption: 'lift coefficients up to 1.0 ± 0.1 can be flown',
    why: 'Thin cambered sections at these Reynolds numbers.',
  },
  'air-temperature': {
    quantity: { kind: 'number', value: 0, u: 8, origin: 'assumed', written: '' },
    name: 'the air’s temperature above the standard atmosphere’s, K',
    assumption: 'the air is 0 ± 8 K warmer than the standard atmosphere',
    why: 'US Standard Atmosphere 1976 at the field’s elevation; summer and winter, morning and noon.',
  },
  'air-pressure': {
    quantity: { kind: 'pressure', value: 0, u: 1000, origin: 'assumed', written: '' },
    name: 'the air’s pressure above the standard atmosphere’s',
    assumption: 'the air’s pressure is 0 ± 10 hPa above that of the standard atmosphere',
    why: 'US Standard Atmosphere 1976 at the field’s elevation; highs and lows.',
  },
  'air-humidity': {
    quantity: { kind: 'share', value: 0.5, u: 0.25, origin: 'assumed', written: '' },
    name: 'the air’s humidity in general',
    assumption: 'the air’s humidity is 50 ± 25 %',
    why: 'Half of what there can be; it hardly matters.',
  },
  'bench-air': {
    quantity: { kind: 'density', value: 1.225, u: 0.036, origin: 'assumed', written: '' },
    name: 'the density of the air at the bench',
    assumption: 'the air at the bench had a density of 1.225 ± 0.036 kg/m³',
    why: 'US Standard Atmosphere 1976 at sea level, ± 8 K and ± 10 hPa.',
  },
  'launch-height': {
    quantity: { kind: 'length', value: 1.8, u: 0.2, origin: 'assumed', written: '' },
    name: 'the launch height of a throw in general',
    assumption: 'the model was let go at 1.8 ± 0.2 m',
    why: 'The height of a hand.',
  },
  drop: {
    quantity: { kind: 'length', value: 0, u: 0.5, origin: 'exact', written: '' },
    name: 'the drop of the ground in general',
    assumption: 'the landing was 0 ± 0.5 m below the launch ground',
    why: 'Nobody mentions level ground.',
  },
} as const satisfies Record<string, Default>;
