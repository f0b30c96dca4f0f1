import type { Contender } from '../../src/contest/contender.ts';
import type { Basis, Figure, FigureSet, FigureUnit } from '../../src/figures/figure.ts';
import type { Design } from '../../src/model/design.ts';
import type { Entry, Flight, Setup } from '../../src/model/entry.ts';
import type { FlightRuling, Inspection, Ruling } from '../../src/model/ruling.ts';
import type { Quantity } from '../../src/quantities/quantity.ts';
import { bareFlight } from '../invented-flight.ts';

// Invented entries as the contest sees them. Figures are given as plain numbers, not worked out.

export function seconds(value: number): Quantity {
  return { kind: 'time', value, u: 0.1, origin: 'measured', written: `${value} s` };
}

export function metres(value: number, u = 0.001): Quantity {
  return { kind: 'length', value, u, origin: 'measured', written: `${value} m` };
}

export function flight(number: number, time: number, overrides: Partial<Flight> = {}): Flight {
  return {
    number,
    date: { date: '2027-05-09', time: null, offset: null, written: '2027-05-09' },
    watches: [seconds(time)],
    ...bareFlight,
    ...overrides,
  };
}

/** On that calendar date; `clock` such as `18:40`, `offset` in minutes east. */
export function on(
  date: string,
  clock: string | null = null,
  offset: number | null = null,
): Pick<Flight, 'date'> {
  return { date: { date, time: clock, offset, written: `${date} ${clock ?? ''}${offset ?? ''}` } };
}

export function design(overrides: Partial<Design> = {}): Design {
  return {
    control: 'free',
    onboard: [],
    origin: 'own',
    layout: 'tail-aft',
    wing: { span: metres(3.2), panels: null, area: null, chord: null, incidence: null, section: null },
    tailplane: null,
    fin: null,
    balance: null,
    nose: null,
    mass: { airframe: null, flying: null, parts: {} },
    structure: {},
    trim: null,
    motors: [],
    inspected: null,
    ...overrides,
  };
}

export function setup(id: string | null, from: string | null, changes: Partial<Design> = {}): Setup {
  return { id, from, change: null, design: design(changes), overrides: [] };
}

export function figure(
  id: string,
  unit: FigureUnit,
  value: number,
  u = 0,
  basis: Basis = 'measured',
): Figure {
  return { id, unit, value, u, basis, assumptions: [], worked: [], shares: [] };
}

export function figures(...list: Figure[]): FigureSet {
  return { entry: new Map(list.map((one) => [one.id, one])), motors: [] };
}

export interface Parts {
  readonly flights?: readonly Flight[];
  readonly setups?: Entry['setups'];
  readonly figures?: FigureSet | ((setup: string | null) => FigureSet);
  readonly figuresAtFlight?: Contender['figuresAtFlight'];
  readonly rulings?: readonly FlightRuling[];
  readonly inspections?: readonly Inspection[];
  readonly disqualified?: Ruling['disqualified'];
  readonly withdrawn?: Entry['withdrawn'];
  readonly junior?: boolean;
  readonly seals?: ReadonlyMap<number, string>;
}

const unchanged = '1-0000000000000000';

/** An entry whose flights all bear the same seal, so that `accepted` rulings fit unless a test says otherwise. */
export function contender(id: string, parts: Parts = {}): Contender {
  const flights = parts.flights ?? [];
  const given = parts.figures ?? figures();
  const modelFigures = typeof given === 'function' ? given : () => given;
  const hasRuling =
    parts.rulings !== undefined || parts.inspections !== undefined || parts.disqualified !== undefined;
  return {
    entry: {
      challenge: 'invented-2027',
      id,
      name: id,
      builders: [{ handle: `builder-of-${id}`, name: null, club: null, junior: false }],
      entered: null,
      photos: [],
      setups: parts.setups ?? [setup(null, null)],
      glides: [],
      flights,
      withdrawn: parts.withdrawn ?? null,
      also: [],
      formerly: [],
      body: '',
    },
    ruling: hasRuling
      ? {
          challenge: 'invented-2027',
          entry: id,
          inspections: parts.inspections ?? [],
          flights: parts.rulings ?? [],
          disqualified: parts.disqualified ?? null,
          body: '',
        }
      : null,
    junior: parts.junior ?? false,
    seals: parts.seals ?? new Map(flights.map(({ number }) => [number, unchanged])),
    modelFigures,
    figuresAtFlight: parts.figuresAtFlight ?? ((_, setupId) => modelFigures(setupId)),
  };
}

export function accepted(number: number, overrides: Partial<FlightRuling> = {}): FlightRuling {
  return {
    flight: number,
    verdict: 'accepted',
    by: 'otter',
    date: '2027-05-12',
    second: null,
    received: null,
    reason: null,
    time: null,
    seen: [],
    kept: null,
    seal: unchanged,
    asRuled: {},
    earlier: [],
    ...overrides,
  };
}

/** An entry all of whose flights are accepted. */
export function acceptedContender(
  id: string,
  flights: readonly Flight[],
  parts: Omit<Parts, 'flights' | 'rulings'> = {},
): Contender {
  return contender(id, { ...parts, flights, rulings: flights.map(({ number }) => accepted(number)) });
}
