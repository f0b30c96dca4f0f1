import type { Batch } from '../model/batch.ts';
import type { BenchLogs } from '../model/bench-log.ts';
import type { Entry, Flight } from '../model/entry.ts';
import type { Inspection } from '../model/ruling.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { OfficialTime } from '../timing/official-time.ts';
import { evaluate } from './evaluate.ts';
import type { FigureSet } from './figure.ts';
import { type FlightAccount, flightAccount } from './flight-account.ts';
import { inspectedSetups } from './inspect.ts';
import { type NoseBallast, noseBallasts } from './nose-ballasts.ts';
import type { Subject } from './subject.ts';
import { thrownGlides } from './thrown-glides.ts';

/** The figures of one entry, each set worked out once and only when somebody asks. */
export interface FiguresOfEntry {
  readonly model: (setup: string | null) => FigureSet;
  /** Figures of the model with a flight's own mass; with `only`, as if no other inspections had been made. */
  readonly atFlight: (flight: Flight, setup: string | null, only?: readonly Inspection[]) => FigureSet;
  /** Figures of a flight, with its own mass; of the setup alone where none was flown. */
  readonly flight: (flown: Flown | null, setup: string | null) => FigureSet;
  /** Figures of the model in a setup together with those of the flight that stands for it. */
  readonly headline: (flown: Flown | null, setup: string | null) => FigureSet;
  /** The nose ballast for the usual static margins. */
  readonly noseBallasts: (setup: string | null) => readonly NoseBallast[];
  /** Where the energy of a flight went, how far its rubber was stretched, what its time is made of. */
  readonly account: (flown: Flown | null, setup: string | null) => FlightAccount;
}

interface Flown {
  readonly flight: Flight;
  readonly official: OfficialTime;
}

/**
 * @param entry as its builder wrote it
 * @param inspections what officials measured of it; laid over the entry's setups
 * @param batches every batch of rubber that could be read, by id
 * @param logs the entry's bench logs
 * @param watch standard uncertainty of a hand-held watch under the challenge's rules, s
 */
export function figuresOfEntry(
  entry: Entry,
  inspections: readonly Inspection[],
  batches: ReadonlyMap<string, Batch>,
  logs: BenchLogs,
  watch: number,
): FiguresOfEntry {
  const worked = new Map<string, FigureSet>();
  const flights = new Map<string, FigureSet>();

  function subject(
    only: readonly Inspection[],
    id: string | null,
    flown: Flown | null,
    mass: Quantity | null,
  ): Subject {
    const setups = inspectedSetups(entry, only);
    const place = Math.max(
      0,
      setups.findIndex((candidate) => candidate.id === id),
    );
    const { design } = setups[place] ?? setups[0];
    return { design, batches, logs, glides: thrownGlides(entry, setups, place, watch), mass, flown };
  }

  function model(id: string | null, only: readonly Inspection[] = inspections): FigureSet {
    const key = `${only.map((inspection) => inspections.indexOf(inspection)).join()} ${id ?? ''}`;
    const known = worked.get(key);
    if (known !== undefined) return known;
    const figures = evaluate(subject(only, id, null, null), 'model');
    worked.set(key, figures);
    return figures;
  }

  function asFlown(flown: Flown | null, id: string | null): Subject {
    return subject(inspections, id, flown, flown?.flight.mass ?? null);
  }

  function flight(flown: Flown | null, id: string | null): FigureSet {
    const key = `${flown?.flight.number ?? ''} ${flown?.official.seconds ?? ''} ${id ?? ''}`;
    const known = flights.get(key);
    if (known !== undefined) return known;
    const figures = evaluate(asFlown(flown, id), 'flight');
    flights.set(key, figures);
    return figures;
  }

  return {
    model,
    atFlight: ({ mass }, id, only = inspections) =>
      mass === null ? model(id, only) : evaluate(subject(only, id, null, mass), 'model'),
    flight,
    headline: (flown, id) => together(model(id), flight(flown, id)),
    noseBallasts: (id) => noseBallasts(subject(inspections, id, null, null)),
    account: (flown, id) => flightAccount(asFlown(flown, id)),
  };
}

function together(first: FigureSet, second: FigureSet): FigureSet {
  return {
    entry: new Map([...first.entry, ...second.entry]),
    motors: first.motors.map((figures, index) => new Map([...figures, ...(second.motors[index] ?? [])])),
  };
}
