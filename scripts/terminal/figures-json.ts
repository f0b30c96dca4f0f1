import type { EntryRecord } from '../../src/almanac/almanac.ts';
import { workedText } from '../../src/components/worked-text.ts';
import { type Figure, type FigureSet, isPresent } from '../../src/figures/figure.ts';
import { dataOfFigure } from '../../src/publish/figure-data.ts';
import { significant } from '../../src/quantities/decimal.ts';

/** All figures of an entry as data: as in the data files, with assumptions and shares of uncertainty added. */
export function figuresJson(record: EntryRecord): string {
  const { entry, headline } = record;
  const data = {
    challenge: entry.challenge,
    entry: entry.id,
    name: entry.name,
    setup: headline.id,
    ...setData(record.figures),
    setups: entry.setups.flatMap((setup, index) => {
      const figures = record.setupFigures[index];
      return figures === undefined ? [] : [{ id: setup.id, ...setData(figures) }];
    }),
    flights: record.flights.map(({ flight, figures }) => ({ number: flight.number, ...setData(figures) })),
  };
  return `${JSON.stringify(data, null, 2)}\n`;
}

function setData(figures: FigureSet) {
  return {
    figures: mapData(figures.entry),
    motors: figures.motors.map((motor) => ({ figures: mapData(motor) })),
  };
}

function mapData(figures: ReadonlyMap<string, Figure>) {
  return Object.fromEntries([...figures].map(([id, figure]) => [id, figureData(figure)]));
}

function figureData(figure: Figure) {
  if (!isPresent(figure)) return dataOfFigure(figure);
  return {
    ...dataOfFigure(figure),
    worked: workedText(figure),
    assumptions: figure.assumptions,
    shares: figure.shares.map(({ input, share }) => ({ input, share: significant(share, 6) })),
  };
}
