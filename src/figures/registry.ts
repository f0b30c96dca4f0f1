import { balanceFigures } from './balance-figures.ts';
import { batchFigures } from './batch-figures.ts';
import type { FigureDefinition } from './definition.ts';
import { durationFigures } from './duration-figures.ts';
import { energyFigures } from './energy-figures.ts';
import { glideFigures } from './glide-figures.ts';
import { massFigures } from './mass-figures.ts';
import { predictionFigures } from './prediction-figures.ts';
import { skeinFigures } from './skein-figures.ts';
import { spiralFigures } from './spiral-figures.ts';
import { tailFigures } from './tail-figures.ts';
import { thrustFigures } from './thrust-figures.ts';
import { torqueFigures } from './torque-figures.ts';
import { wingFigures } from './wing-figures.ts';

/** Every figure there is, in the order in which they are shown. A new figure is one declaration in one of these. */
export const figureDefinitions: readonly FigureDefinition[] = [
  ...durationFigures,
  ...wingFigures,
  ...massFigures,
  ...tailFigures,
  ...balanceFigures,
  ...spiralFigures,
  ...skeinFigures,
  ...energyFigures,
  ...torqueFigures,
  ...thrustFigures,
  ...glideFigures,
  ...predictionFigures,
  ...batchFigures,
];

/** Those of the model, in the same order: the only ones that rules may name, so that places do not rest on places. */
export const figuresOfModel = figureDefinitions.filter(({ of }) => of === 'model');

const byId: ReadonlyMap<string, FigureDefinition> = new Map(
  figureDefinitions.map((definition) => [definition.id, definition]),
);

/** The figure of that id; undefined where there is none. */
export function figureDefinition(id: string): FigureDefinition | undefined {
  return byId.get(id);
}
