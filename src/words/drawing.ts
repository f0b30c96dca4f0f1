import type { Note } from '../drawings/note.ts';
import type { PlanShape } from '../drawings/plan-shape.ts';
import { counted, listed } from './texts.ts';

// What the plan drawings say. A length arrives as text, in both systems of units.

const notes: Record<Note, string> = {
  'straight-wing': 'The wing is a rectangle of its span and mean chord: its panels were not given.',
  'straight-leading-edge': 'Panels without a sweep have a straight leading edge.',
  'panels-miss-span': 'The wing is drawn from its panels, which do not add up to the span given.',
  'level-wing': 'No dihedral was given: from behind, the wing would be level.',
  'tail-rectangle': 'The tail is a rectangle of its span and area.',
  'tail-proportions': 'The tail’s span is taken as four chords: only its span or its area was given.',
  'tail-arm': 'The tail stands 0.45 spans of the wing from the wing: its arm was not given.',
  'tail-left-out': 'No tail is drawn: neither its span nor its area was given.',
  'fin-proportions': 'Each fin is one and a half times as high as it is long.',
  'fin-places': 'The fins are spread over the surface they are nearest to.',
  'fin-arm': 'The fin stands at the tail: its arm was not given.',
  'fin-left-out': 'No fin is drawn: its area or its arm was not given.',
  stick: 'The body is drawn as a stick of no measured width.',
  nose: 'The nose stands one mean chord ahead of the wing: it was not given.',
  facing: 'Motors are taken to pull: nobody wrote which way they face.',
  'motor-on-centre-line': 'The motor is taken to be on the centre line.',
  'motors-share-places': 'Several motors share a place.',
  'motors-left-out': 'Motors whose places were not given are left out.',
  'propellers-off-the-wing': 'Propellers stand a fifth of the chord off the wing’s edge.',
  'propeller-at-the-nose': 'The propeller on the centre line stands at the nose.',
  'propeller-unknown': 'A propeller without a diameter is a dot.',
  'hooks-unknown': 'No skein is drawn where the spacing of its hooks was not given.',
};

const tailNames = {
  tailplane: 'a tailplane',
  foreplane: 'a foreplane',
  'second-wing': 'a second wing',
} as const;

export const drawing = {
  title: (name: string) => `Plan of ${name}`,
  none: 'No chord or area was given, so the plan cannot be drawn.',
  toScale: 'To scale. Solid lines are measured, dashed ones assumed.',
  assumed: (count: number) => `What the drawing takes for granted (${count})`,
  notes,
  balance: 'balance',
  neutralPoint: 'neutral point',
  fromBehind: 'from behind',
  overlayTitle: (names: readonly string[]) => `${listed(names)} from above, to one scale`,
  overlayDescription: (spans: readonly string[]) =>
    `Seen from above, nose up, laid over each other with the quarter-chords of their wings on one line: ${listed(spans)}.`,
  overlayAligned: 'To one scale, the quarter-chords of the wings on one line.',
  /** The drawing in words, for those who cannot see it. */
  description: (shape: PlanShape, span: string, fromBehind: boolean) =>
    `${[
      `Seen from above${fromBehind ? ' and from behind' : ''}, nose up: a wing of ${span} span`,
      `${shape.wing.assumed ? 'drawn as a rectangle' : `in ${counted(shape.wing.sections.length / 2, 'panel')} a side`}`,
      shape.tail === null
        ? 'no tail'
        : `${tailNames[shape.tail.kind]} ${shape.tail.kind === 'foreplane' ? 'ahead of' : 'behind'} it`,
      ...(shape.fins.length === 0 ? [] : [counted(shape.fins.length, 'fin')]),
      motors(shape),
      ...marks(shape),
    ].join(', ')}.`,
} as const;

function motors({ motors: all }: PlanShape): string {
  if (all.length === 0) return 'no motor drawn';
  const pushing = all.filter(({ faces }) => faces === 'pusher').length;
  const pulling = all.length - pushing;
  return listed([
    ...(pulling > 0 ? [`${counted(pulling, 'propeller')} that ${pulling === 1 ? 'pulls' : 'pull'}`] : []),
    ...(pushing > 0 ? [`${counted(pushing, 'propeller')} that ${pushing === 1 ? 'pushes' : 'push'}`] : []),
  ]);
}

/** Where the marks lie, in shares of the mean chord from its leading edge. */
function marks({ wing: { mean }, balance, neutralPoint }: PlanShape): string[] {
  const lies = (x: number) => {
    const share = Math.round((100 * (x - mean.leadingEdge)) / mean.chord);
    return `at ${Math.abs(share)} % of the mean chord ${share < 0 ? 'ahead of' : 'behind'} its leading edge`;
  };
  return [
    ...(balance === null ? [] : [`the balance ${lies(balance)}`]),
    ...(neutralPoint === null ? [] : [`the neutral point ${lies(neutralPoint)}`]),
  ];
}
