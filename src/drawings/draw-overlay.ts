import { type DrawingNames, drawingSvg } from './drawing-svg.ts';
import { type Label, labelText, letterWidth } from './label.ts';
import type { Paper } from './paper.ts';
import type { PlanShape } from './plan-shape.ts';
import type { Point } from './point.ts';
import { drawScaleBar } from './scale-bar.ts';
import { layOutSheet } from './sheet.ts';
import { closedPath, linePath, path } from './svg-text.ts';
import { tailOutline } from './tail-shape.ts';
import { quarterChord, wingJoints, wingOutline } from './wing-shape.ts';

/** One of the aircraft laid over each other. */
export interface Overlaid {
  readonly name: string;
  readonly shape: PlanShape;
  /** Its span as text, for the key. */
  readonly span: Label;
}

/** So many aircraft have a line of their own; with more nothing could be told apart. */
export const mostOverlaid = 4;

const rowHeight = 22;
const sampleLength = 40;

/**
 * Two to four aircraft from above, to one scale, with the quarter-chords of their wings on one line: there the arms of
 * all tails begin. Told apart by the pattern and the weight of their lines (classes `overlaid first` to `fourth`), with
 * a key below. Further aircraft are left out. Pure, so that build and browser draw alike.
 */
export function drawOverlay(aircraft: readonly Overlaid[], paper: Paper, names: DrawingNames): string {
  const drawn = aircraft.slice(0, mostOverlaid);
  const key = drawn.length * rowHeight;
  const sheet = layOutSheet(
    drawn.map(({ shape }) => ({ shape, forwards: quarterChord(shape.wing) })),
    { ...paper, tallest: paper.tallest + key, bottom: paper.bottom + key },
    false,
  );
  const { sides } = paper;
  const end = { x: paper.width - sides, y: 0 };
  const line = { ...sheet.above({ x: 0, y: 0 }), x: sides };
  const below = sheet.floor + 30;
  return drawingSvg(sheet, names, [
    path('drawn-axis', linePath(line, { ...line, x: end.x })),
    ...drawn.map(({ shape }, index) => path(styleOf(index), overlaid(shape, sheet.above))),
    ...drawn.map((one, index) => keyRow(one, index, { x: sides, y: below + index * rowHeight }, paper)),
    drawScaleBar({ x: sides, y: sheet.height - 18 }, sheet.scale, paper.width / 4),
  ]);
}

function styleOf(index: number): string {
  return `overlaid ${['first', 'second', 'third', 'fourth'][index] ?? ''}`;
}

/** Everything of one aircraft as one path, its wing's quarter-chord at zero. */
function overlaid({ wing, tail, stick, motors }: PlanShape, above: (point: Point) => Point): string {
  const quarter = quarterChord(wing);
  const at = ({ x, y }: Point) => above({ x: x - quarter, y });
  const line = (from: Point, to: Point) => linePath(at(from), at(to));
  return [
    closedPath(wingOutline(wing).map(at)),
    ...wingJoints(wing).flatMap(([from, to]) => [
      line(from, to),
      line({ ...from, y: -from.y }, { ...to, y: -to.y }),
    ]),
    ...(tail === null ? [] : [closedPath(tailOutline(tail).map(at))]),
    ...(stick === null ? [] : [line({ x: stick.front, y: 0 }, { x: stick.rear, y: 0 })]),
    ...motors.flatMap(({ propeller: x, y, radius }) =>
      radius === null ? [] : [line({ x, y: y - radius }, { x, y: y + radius })],
    ),
  ].join('');
}

function keyRow({ name, span }: Overlaid, index: number, { x, y }: Point, paper: Paper): string {
  const room = paper.width - 2 * paper.sides - sampleLength - 12;
  const letters = Math.floor(room / (letterWidth * paper.letter)) - span.imperial.length - 2;
  const short = shortened(name, letters);
  const label = { metric: `${short}, ${span.metric}`, imperial: `${short}, ${span.imperial}` };
  const sample = path(styleOf(index), linePath({ x, y }, { x: x + sampleLength, y }));
  return sample + labelText(label, { x: x + sampleLength + 12, y: y + 4, anchor: 'start' });
}

function shortened(name: string, most: number): string {
  const letters = [...name];
  return letters.length <= most ? name : `${letters.slice(0, most - 1).join('')}…`;
}
