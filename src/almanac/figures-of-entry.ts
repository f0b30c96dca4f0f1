import { evaluate } from '../figures/evaluate.ts';
import type { FigureSet } from '../figures/figure.ts';
import type { Batch } from '../model/batch.ts';
import type { Entry, Flight, Setup } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { OfficialTime } from '../timing/official-time.ts';

/** The figures of one entry, each set worked out once and only when somebody asks. */
export interface FiguresOfEntry {
  readonly model: (setup: string | null) => FigureSet;
  readonly atFlight: (flight: Flight, setup: string | null) => FigureSet;
  /** Figures of a flight, with its own mass; of the setup alone where none was flown. */
  readonly flight: (flown: Flown | null, setup: string | null) => FigureSet;
  /** Figures of the model in a setup together with those of the flight that stands for it. */
  readonly headline: (flown: Flown | null, setup: string | null) => FigureSet;
}

interface Flown {
  readonly flight: Flight;
  readonly official: OfficialTime;
}

/**
 * @param entry its setups already overlaid with what was inspected
 * @param batches every batch of rubber that could be read, by id
 */
export function figuresOfEntry(entry: Entry, batches: ReadonlyMap<string, Batch>): FiguresOfEntry {
  const modelBySetup = new Map<string | null, FigureSet>();

  function setupById(id: string | null): Setup {
    return entry.setups.find((setup) => setup.id === id) ?? entry.setups[0];
  }

  function subject(id: string | null, mass: Quantity | null, flown: Flown | null) {
    return { design: setupById(id).design, batches, mass, flown };
  }

  function model(id: string | null): FigureSet {
    const known = modelBySetup.get(id);
    if (known !== undefined) return known;
    const figures = evaluate(subject(id, null, null), 'model');
    modelBySetup.set(id, figures);
    return figures;
  }

  function flight(flown: Flown | null, id: string | null): FigureSet {
    return evaluate(subject(id, flown?.flight.mass ?? null, flown), 'flight');
  }

  return {
    model,
    atFlight: (flown, id) =>
      flown.mass === null ? model(id) : evaluate(subject(id, flown.mass, null), 'model'),
    flight,
    headline: (flown, id) => together(model(id), flight(flown, id)),
  };
}

function together(first: FigureSet, second: FigureSet): FigureSet {
  return {
    entry: new Map([...first.entry, ...second.entry]),
    motors: first.motors.map((figures, index) => new Map([...figures, ...(second.motors[index] ?? [])])),
  };
}
