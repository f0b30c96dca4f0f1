import type { ChallengeRecord, EntryRecord } from '../../almanac/almanac.ts';
import type { PlotData, PlotFigure, PlotValue } from '../../client/plot/plot-data.ts';
import type { FigureDefinition } from '../../figures/definition.ts';
import { type FigureSet, isPresent } from '../../figures/figure.ts';
import { figureDefinitions } from '../../figures/registry.ts';
import { kindOfFigure } from '../../figures/unit-kind.ts';
import { significant } from '../../quantities/decimal.ts';
import { words } from '../../words.ts';
import { unitsOfFigure } from '../units-shown.ts';
import { betterOf } from './better.ts';

/** More digits than any page shows. */
const digits = 8;
/** Of a value without ±, as in measureOfFigure. */
const digitsWithoutU = 3;

/** What a plot of a challenge is chosen from: its aircraft, and every figure that at least one of them has. */
export function plotDataOf({ challenge, entries }: ChallengeRecord): PlotData {
  const definitions = figureDefinitions.filter(
    (one) => one.of !== 'batch' && entries.some(({ figures }) => 'value' in valueIn(figures, one.id)),
  );
  return {
    challenges: new Map([[challenge.id, challenge.title]]),
    figures: definitions.map(plotFigure),
    divisions: challenge.divisions.map(({ id, name }) => ({ id, name })),
    entries: entries.map((record) => entryOf(record, challenge.id, definitions)),
  };
}

function plotFigure(definition: FigureDefinition): PlotFigure {
  const kind = kindOfFigure(definition);
  return {
    id: definition.id,
    name: definition.name,
    kind,
    ...unitsOfFigure(definition.id, kind),
    better: betterOf(definition.id),
    ofFlight: definition.of === 'flight',
  };
}

function entryOf(
  { entry, judged, figures }: EntryRecord,
  challenge: string,
  definitions: readonly FigureDefinition[],
): PlotData['entries'][number] {
  return {
    challenge,
    id: entry.id,
    name: entry.name,
    divisions: judged.divisions,
    waiting: judged.bestCounted === null && judged.bestProvisional !== null,
    figures: new Map(definitions.map(({ id }) => [id, valueIn(figures, id)])),
  };
}

/** A figure of the whole aircraft; of its motors where one value holds for all of them. */
function valueIn({ entry, motors }: FigureSet, id: string): PlotValue {
  const found = entry.has(id)
    ? [entry.get(id)]
    : motors.map((motor) => motor.get(id)).filter((figure) => figure !== undefined);
  const [first, ...others] = found;
  if (first === undefined) return { absent: words.plot.notGiven };
  if (!isPresent(first)) return { absent: first.absent };
  if (others.some((figure) => !isPresent(figure) || figure.value !== first.value))
    return { absent: words.plot.differs };
  return {
    value: significant(first.value, first.u === 0 ? digitsWithoutU : digits),
    u: significant(first.u, digits),
  };
}
