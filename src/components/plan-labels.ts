import type { PlanLabels } from '../drawings/draw-plan.ts';
import type { FigureSet } from '../figures/figure.ts';
import { isPresent } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { drawing } from '../words/drawing.ts';
import { type InBoth, measureOfFigure, plainInBoth } from './measure.ts';
import { measureOfQuantity } from './quantity-text.ts';
import { type UnitPair, unitPairs } from './units-shown.ts';

/** The texts of a plan's dimension lines: what was written, in both systems of units. */
export function planLabels({ wing, tailplane, motors, nose }: Design, figures: FigureSet): PlanLabels {
  const span = figures.entry.get('span');
  return {
    span: isPresent(span) ? plainInBoth(measureOfFigure(span)) : written(wing.span, unitPairs.span),
    rootChord: sized(wing.panels?.[0]?.root ?? null),
    arm: sized(tailplane?.arm ?? null),
    nose: sized(nose),
    fromBehind: drawing.fromBehind,
    dihedrals: (wing.panels ?? []).map(({ dihedral }) =>
      dihedral === null ? null : written(dihedral, unitPairs.angle),
    ),
    propellers: motors.map(({ propeller }) => {
      const text = sized(propeller?.diameter ?? null);
      return text === null ? null : { metric: `⌀ ${text.metric}`, imperial: `⌀ ${text.imperial}` };
    }),
  };
}

function sized(quantity: Quantity | null): InBoth | null {
  return quantity === null ? null : written(quantity, unitPairs.size);
}

function written(quantity: Quantity, units: UnitPair): InBoth {
  return plainInBoth(measureOfQuantity(quantity, units));
}
