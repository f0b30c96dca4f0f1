import { listed } from './texts.ts';

export const trim = {
  history: 'Trim, throw by throw',
  explained:
    'Glides and flights in the order of their dates. What a throw says is a rule of thumb; a throw that met a gust says nothing.',
  throw: 'Throw',
  glide: 'Glide',
  firstSetup: 'first',
  moved: (distance: string, back: boolean) => `moved ${distance} ${back ? 'back' : 'forward'}`,
  verdicts: {
    glide: {
      'tail-heavy': 'tail-heavy, or too much angle between wing and tail',
      'nose-heavy': 'nose-heavy, or too little angle between wing and tail',
      left: 'turns left too tightly',
      right: 'turns right too tightly',
      rolled: 'one wing gives way: look for a warp',
      disturbed: 'says nothing: throw again',
    },
    flight: {
      'tail-heavy': 'tail-heavy, or too little down-thrust if it was under power',
      'nose-heavy': 'nose-heavy, or too much down-thrust if it was under power',
      left: 'turns left too tightly, in the glide or from the torque',
      right: 'turns right too tightly, in the glide or from the torque',
      rolled: 'one wing gives way: look for a warp, or too much torque',
      disturbed: 'says nothing of the trim',
    },
  },
  ballast: 'Weight in the nose for a static margin',
  ballastExplained:
    'What it takes to balance this aircraft at another static margin, with the weight as far forward as its builder says it can sit. An estimate to begin with: the throws have the last word. Where weight is to come out and none sits there, move something back.',
  marginWanted: 'Static margin wanted',
  shift: 'Balance moves',
  noseWeight: 'Weight in the nose',
  forward: 'forward',
  back: 'back',
  add: 'to add',
  takeOut: 'to take out',
  noBallast: (margins: readonly string[], reason: string) =>
    `No weight can be told for ${listed(margins)}: it ${reason}.`,
} as const;
