import type { Label } from './label.ts';
import type { Paper } from './paper.ts';
import type { PlanShape } from './plan-shape.ts';
import { drawScaleBar } from './scale-bar.ts';
import { layOutSheet } from './sheet.ts';
import { escaped } from './svg-text.ts';
import { viewFromAbove } from './view-from-above.ts';

/** What a drawing is called, for those who cannot see it. */
export interface DrawingNames {
  /** Unique on its page. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
}

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

/** A whole drawing with title and description. */
export function drawingSvg(
  { width, height, paper }: { readonly width: number; readonly height: number; readonly paper: Paper },
  { id, title, description }: DrawingNames,
  parts: readonly string[],
): string {
  const own = `${id}-${paper.name}`;
  return `<svg class="drawing ${paper.name}" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${own}-title ${own}-description"><title id="${own}-title">${escaped(title)}</title><desc id="${own}-description">${escaped(description)}</desc>${parts.join('')}</svg>`;
}
