import { entry } from '../schema/entry.ts';
import { type Beginning, keysAsOptions } from './beginning.ts';

/** An aircraft in a challenge. Its setups, glides and flights come one by one, later. */
export const entryBeginning: Beginning = {
  called: 'an entry',
  schema: entry,
  options: {
    ...keysAsOptions(entry, ['setups', 'glides', 'flights', 'withdrawn', 'also', 'formerly']),
    span: 'wing.span',
    area: 'wing.area',
    chord: 'wing.chord',
    airframe: 'mass.airframe',
    flying: 'mass.flying',
    count: 'motors.count',
    strip: 'motors.skein.strip',
    width: 'motors.skein.strip.width',
    thickness: 'motors.skein.strip.thickness',
    batch: 'motors.skein.batch',
    strands: 'motors.skein.strands',
    length: 'motors.skein.length',
    rubber: 'motors.skein.mass',
    hooks: 'motors.hooks',
    diameter: 'motors.propeller.diameter',
    pitch: 'motors.propeller.pitch',
    blades: 'motors.propeller.blades',
  },
  questions: [
    { field: 'name' },
    { field: 'builder.handle' },
    {
      field: 'builder.name',
      optional: true,
      hint: 'Juniors leave it out: they are shown by their handle only.',
    },
    { field: 'builder.junior', optional: true, unless: ['builder.name'] },
    { field: 'control' },
    { field: 'wing.span' },
    {
      field: 'mass.airframe',
      optional: true,
      unless: ['mass.flying'],
      hint: 'Or leave it out and give the flying mass.',
    },
    { field: 'mass.flying', unless: ['mass.airframe'] },
    { field: 'motors.count' },
  ],
  groups: [
    {
      title: 'the rubber of one motor',
      tells: [
        { figure: 'rubber-mass' },
        { figure: 'rubber-share' },
        { figure: 'flying-mass', unless: 'mass.flying' },
        { figure: 'airframe-mass', unless: 'mass.airframe' },
        { figure: 'wing-loading', unless: 'mass.flying' },
        { figure: 'skein-section' },
      ],
      questions: [
        {
          field: 'motors.skein.batch',
          optional: true,
          unless: ['motors.skein.strip'],
          hint: 'One of content/rubber, which knows its strip.',
        },
        { field: 'motors.skein.strip.width', optional: true, unless: ['motors.skein.batch'] },
        {
          field: 'motors.skein.strip.thickness',
          unless: ['motors.skein.batch'],
          when: 'motors.skein.strip.width',
        },
        { field: 'motors.skein.strands', optional: true },
        { field: 'motors.skein.length', optional: true },
        { field: 'motors.skein.mass', optional: true },
      ],
    },
    {
      title: 'the propeller',
      questions: [
        { field: 'motors.propeller.diameter', optional: true },
        { field: 'motors.propeller.pitch', optional: true },
        { field: 'motors.propeller.blades', optional: true },
        { field: 'motors.propeller.after', optional: true },
      ],
    },
    {
      title: 'the area of the wing',
      tells: [
        { figure: 'wing-area' },
        { figure: 'mean-chord' },
        { figure: 'aspect-ratio' },
        { figure: 'wing-loading' },
      ],
      questions: [
        {
          field: 'wing.area',
          optional: true,
          unless: ['wing.panels', 'wing.chord'],
          hint: 'Or leave it out and give the mean chord.',
        },
        { field: 'wing.chord', optional: true, unless: ['wing.panels', 'wing.area'] },
      ],
    },
    {
      title: 'tail and balance',
      tells: [{ figure: 'tail-area' }, { figure: 'tail-volume' }, { figure: 'balance-point' }],
      questions: [
        { field: 'tailplane.area', optional: true },
        { field: 'tailplane.arm', optional: true },
        { field: 'balance', optional: true },
      ],
    },
  ],
  offered: [
    'onboard',
    'origin',
    'layout',
    'photos',
    'wing.panels',
    'tailplane',
    'fin',
    'balance',
    'structure',
    'trim',
    'motors.rotation',
    'motors.hooks',
    'motors.skein',
    'motors.break-turns',
    'motors.propeller',
  ],
  body: `<!-- Here stands the build log, in Markdown: how it was built, what was tried, what broke, what helped. These lines are not shown;
write yours in their place. -->
`,
};
