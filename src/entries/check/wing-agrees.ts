import { type PlanformPanel, projectedArea, projectedSpan } from '../../airframe/planform.ts';
import { formatQuantity } from '../../quantities/format-quantity.ts';
import type { Kind, Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';
import type { SourceDocument } from '../source/source.ts';
import { type DesignDraft, designsOf, type SetupDesign } from '../understand/setup-designs.ts';
import type { EntryCheck } from './entry-check.ts';

/** Further apart than this share of the larger, two ways of giving the same thing are said to differ. */
const tolerance = 0.02;

/** The span of the panels, the area and the mean chord fit each other and the span, as far as each is given. */
export const checkWingAgrees: EntryCheck = (draft, source) =>
  designsOf(draft).flatMap((setup) => {
    const { design, wrote } = setup;
    const span = design.wing?.span;
    const panels = panelSums(design);
    const area = design.wing?.area;
    const problems: Problem[] = [];
    if (panels !== null && span !== undefined && wrote('wing.span', 'wing.panels'))
      problems.push(
        ...compared(
          source,
          setup,
          'wing.span',
          span,
          panels.span,
          'span-differs',
          'the panels have a span of',
        ),
      );
    if (panels !== null && area !== undefined && wrote('wing.area', 'wing.panels'))
      problems.push(
        ...compared(
          source,
          setup,
          'wing.area',
          area,
          panels.area,
          'area-differs',
          'the panels have an area of',
        ),
      );
    const chord = design.wing?.chord;
    const whole = panels?.area ?? area?.value;
    if (chord !== undefined && span !== undefined && whole !== undefined)
      if (wrote('wing.chord', 'wing.area', 'wing.panels', 'wing.span'))
        problems.push(
          ...compared(
            source,
            setup,
            'wing.chord',
            chord,
            whole / span.value,
            'chord-differs',
            panels === null ? '`area` divided by `span` is' : "the panels' area divided by `span` is",
          ),
        );
    return problems;
  });

/** Projected span and area of both halves, m and m²; null where a panel could not be read or none reaches outwards. */
function panelSums(design: DesignDraft): { readonly span: number; readonly area: number } | null {
  const panels = design.wing?.panels;
  if (panels === undefined) return null;
  const read: PlanformPanel[] = [];
  for (const panel of panels) {
    if (panel?.length === undefined || panel.root === undefined || panel.tip === undefined) return null;
    const { length, root, tip, sweep, dihedral } = panel;
    read.push({
      length: length.value,
      root: root.value,
      tip: tip.value,
      sweep: sweep?.value ?? 0,
      dihedral: dihedral?.value ?? 0,
    });
  }
  const span = projectedSpan(read);
  return span > 0 ? { span, area: projectedArea(read) } : null;
}

function compared(
  source: SourceDocument,
  { at }: SetupDesign,
  field: string,
  stated: Quantity,
  reckoned: number,
  code: ProblemCode,
  other: string,
): Problem[] {
  const apart = Math.abs(stated.value - reckoned) / Math.max(Math.abs(stated.value), Math.abs(reckoned));
  if (!(apart > tolerance)) return [];
  const path = at(field);
  const reckonedText = inUnitOf(stated.kind, reckoned);
  return [
    problemAt(source, path, 'value', code, {
      message: `${fieldName(source, path)} is "${stated.written}", but ${other} ${reckonedText}: ${(100 * apart).toFixed(1)} % apart. Measure again and correct the wrong one.`,
      found: stated.written,
      accepted: `within ${100 * tolerance} % of ${reckonedText}`,
    }),
  ];
}

function inUnitOf(kind: Kind, value: number): string {
  return kind === 'area'
    ? formatQuantity(Number((value * 100).toPrecision(4)) / 100, kind, 'dm2')
    : formatQuantity(Number(value.toPrecision(4)), kind, value < 1 ? 'mm' : 'm');
}
