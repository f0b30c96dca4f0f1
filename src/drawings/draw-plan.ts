import { placeAnnotations } from './annotation.ts';
import { armDimension, noseDimension, rootChordDimension, spanDimension } from './dimension-lines.ts';
import { type DrawingNames, drawingSvg } from './drawing-svg.ts';
import type { Label } from './label.ts';
import type { Paper } from './paper.ts';
import type { PlanShape } from './plan-shape.ts';
import { propellerLabels } from './propeller-labels.ts';
import { drawScaleBar } from './scale-bar.ts';
import { layOutSheet } from './sheet.ts';
import { takenByPlan } from './taken-by-plan.ts';
import { viewFromAbove } from './view-from-above.ts';
import { behindLabel, dihedralLabels, seenFromBehind, viewFromBehind } from './view-from-behind.ts';

/** What the measured lengths and angles are written as; a missing one gets no dimension line. */
export interface PlanLabels {
  readonly span: Label;
  readonly rootChord: Label | null;
  readonly arm: Label | null;
  readonly nose: Label | null;
  /** One for each kind of motor. */
  readonly propellers: readonly (Label | null)[];
  /** What the lower view is. */
  readonly fromBehind: string;
  /** One for each panel. */
  readonly dihedrals: readonly (Label | null)[];
}

/**
 * One aircraft to scale on one kind of paper, as SVG text: from above, and below that from behind where there is
 * something to see. Words that find no free place are left out.
 */
export function drawPlan(shape: PlanShape, paper: Paper, names: DrawingNames, labels: PlanLabels): string {
  const sheet = layOutSheet([{ shape, forwards: 0 }], paper, seenFromBehind(shape));
  const { span, arm, rootChord, nose } = labels;
  const annotations = [
    spanDimension(shape, sheet, span),
    ...(arm === null ? [] : [armDimension(shape, sheet, arm)]),
    ...(rootChord === null ? [] : [rootChordDimension(shape, sheet, rootChord)]),
    ...propellerLabels(shape, sheet, labels.propellers),
    ...(nose === null ? [] : [noseDimension(shape, sheet, nose)]),
    ...dihedralLabels(shape, sheet, labels.dihedrals),
    ...behindLabel(shape, sheet, labels.fromBehind),
  ];
  return drawingSvg(sheet, names, [
    viewFromAbove(shape, sheet),
    viewFromBehind(shape, sheet),
    placeAnnotations(annotations, takenByPlan(shape, sheet), sheet),
    drawScaleBar({ x: paper.sides, y: sheet.height - 20 }, sheet.scale, paper.width / 4),
  ]);
}
