import { type DrawingNames, drawingSvg } from './drawing-svg.ts';
import type { Label } from './label.ts';
import type { Paper } from './paper.ts';
import type { PlanShape } from './plan-shape.ts';
import { drawScaleBar } from './scale-bar.ts';
import { layOutSheet } from './sheet.ts';
import { viewFromAbove } from './view-from-above.ts';

/** Lengths as texts; a missing one gets no dimension line. */
export interface PlanLabels {
  readonly span: Label;
  readonly rootChord: Label | null;
  readonly arm: Label | null;
  /** One for each kind of motor. */
  readonly propellers: readonly (Label | null)[];
}

/** One aircraft to scale on one kind of paper, as SVG text. */
export function drawPlan(shape: PlanShape, paper: Paper, names: DrawingNames, _labels: PlanLabels): string {
  const sheet = layOutSheet([{ shape, forwards: 0 }], paper, false);
  return drawingSvg(sheet, names, [
    viewFromAbove(shape, sheet),
    drawScaleBar({ x: paper.sides, y: sheet.height - 20 }, sheet.scale, paper.width / 4),
  ]);
}
