import { challenge } from '../schema/challenge.ts';
import type { PlainMap } from './begin-file.ts';
import { type Beginning, keysAsOptions } from './beginning.ts';

/** The rules of a challenge. */
export const challengeBeginning: Beginning = {
  called: 'a challenge',
  schema: challenge,
  options: {
    ...keysAsOptions(challenge, ['target', 'amendments', 'formerly']),
    target: 'target.time',
    label: 'target.label',
    method: 'scoring.method',
    launch: 'flying.launch',
    maximum: 'flying.maximum',
    'attempt-below': 'flying.attempt-below',
    timekeepers: 'flying.timekeepers',
  },
  questions: [
    { field: 'title' },
    { field: 'opens' },
    { field: 'closes' },
    { field: 'report-by', optional: true },
    { field: 'final', optional: true },
    { field: 'time-zone', optional: true },
    { field: 'target.time', optional: true },
  ],
  groups: [
    {
      title: 'who may enter',
      questions: [
        { field: 'eligibility.span', optional: true },
        { field: 'eligibility.flying-mass', optional: true },
        { field: 'eligibility.rubber-mass', optional: true },
        { field: 'eligibility.control', optional: true },
      ],
    },
    {
      title: 'what a flight must bring with it',
      questions: [
        { field: 'flying.launch', optional: true },
        { field: 'flying.attempt-below', optional: true },
        { field: 'flying.timekeepers', optional: true },
        { field: 'flying.evidence.links', optional: true },
      ],
    },
  ],
  offered: [
    'report-by',
    'final',
    'time-zone',
    'target',
    'milestones',
    'eligibility',
    'flying',
    'flying.launch',
    'flying.launch-height',
    'flying.drop',
    'flying.release',
    'flying.attempt-below',
    'flying.maximum',
    'flying.flights-per-day',
    'flying.flights',
    'flying.timekeepers',
    'flying.evidence',
    'tie-break',
    'divisions',
    'protests',
    'amendments',
  ],
  body: `<!-- Here stands what rules as data cannot say, in Markdown: what the challenge is for, where its times come from, whom to ask. These
lines are not shown; write yours in their place. -->
`,
};

/** What holds for timing and scoring where a challenge says nothing, written out so that its organiser sees it. */
export const rulesThatHoldAnyway: PlainMap = {
  timing: {
    starts: 'release',
    stops: { touchdown: 'true' },
    combine: 'mean',
    resolution: '0.1 s',
    round: 'down',
    uncertainty: { watch: '0.1 s', video: '0.05 s' },
  },
  scoring: { method: 'best', provisional: 'apart' },
};
