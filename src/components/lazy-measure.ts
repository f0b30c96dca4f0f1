import type { Measure } from './measure.ts';
import type { UnitPair } from './units-shown.ts';

/** Writes a value in the unit of a symbol. */
type Write = (symbol: string) => string;

/** A measure whose four texts are written when they are read: a page shows one or two of them. */
export function lazyMeasure(units: UnitPair, withU: Write, plain: Write): Measure {
  return {
    get metric() {
      return withU(units.metric);
    },
    get imperial() {
      return withU(units.imperial);
    },
    get metricPlain() {
      return plain(units.metric);
    },
    get imperialPlain() {
      return plain(units.imperial);
    },
  };
}
