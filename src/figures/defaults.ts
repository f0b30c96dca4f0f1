import type { Quantity } from '../quantities/quantity.ts';

/** A number used only where nothing was measured. It is a base input like any other, with its own uncertainty. */
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
} as const satisfies Record<string, Default>;
