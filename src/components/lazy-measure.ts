import type { Measure } from './measure.ts';
import type { UnitPair } from './units-shown.ts';

/** Writes a value in the unit of a symbol. */
type Write = (symbol: string) => string;

/** A measure whose four texts are written when they are read: a page shows one or two of them. */
export function lazyMeasure(units: UnitPair, withU: Write, plain: Write): Measure {
  return new LazyMeasure(units, withU, plain);
}

/** A class, since a page makes hundreds: four getters in an object of its own for each would take longer than what they write. */
class LazyMeasure implements Measure {
  readonly #units: UnitPair;
  readonly #withU: Write;
  readonly #plain: Write;

  constructor(units: UnitPair, withU: Write, plain: Write) {
    this.#units = units;
    this.#withU = withU;
    this.#plain = plain;
  }

  get metric(): string {
    return this.#withU(this.#units.metric);
  }

  get imperial(): string {
    return this.#withU(this.#units.imperial);
  }

  get metricPlain(): string {
    return this.#plain(this.#units.metric);
  }

  get imperialPlain(): string {
    return this.#plain(this.#units.imperial);
  }

  /** As plain texts: measures that are told apart by their JSON, or sent in it, would otherwise all be alike. */
  toJSON(): Measure {
    const { metric, imperial, metricPlain, imperialPlain } = this;
    return { metric, imperial, metricPlain, imperialPlain };
  }
}
