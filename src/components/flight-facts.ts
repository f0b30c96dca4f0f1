import type { FlightRecord } from '../almanac/almanac.ts';
import type { Flight, Weather } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import { listed, words } from '../words.ts';
import { type InBoth, type System, secondsText } from './measure.ts';
import { asWritten, watchText } from './quantity-text.ts';
import { type UnitPair, unitPairs } from './units-shown.ts';

/** One line of what is known of a flight. */
export interface FlightFact {
  readonly label: string;
  readonly text: InBoth;
}

const say = words.entry;

/** Writes a quantity in one system. */
type Show = (quantity: Quantity, units: UnitPair) => string;

/** What of a flight is told here, and not elsewhere on its page. */
interface Told {
  /** The setup: not where the aircraft has only one. */
  readonly setup: boolean;
  /** The readings of the watches: not where the explanation of the official time has told them. */
  readonly watches: boolean;
}

/** Everything written about a flight, in a fixed order; what was not given has no line. */
export function flightFacts(record: FlightRecord, tell: Told): FlightFact[] {
  const imperial = linesIn(record, 'imperial', tell);
  return linesIn(record, 'metric', tell).flatMap(([label, text], index) => {
    const other = imperial[index]?.[1];
    return text === null || text === '' ? [] : [{ label, text: { metric: text, imperial: other ?? text } }];
  });
}

function linesIn(record: FlightRecord, system: System, tell: Told): (readonly [string, string | null])[] {
  const { flight, judged } = record;
  const show = (quantity: Quantity, units: UnitPair): string => asWritten(quantity, units)[system];
  const one = (quantity: Quantity | null, units: UnitPair): string | null =>
    quantity === null ? null : show(quantity, units);
  const several = (quantities: readonly Quantity[], units: UnitPair): string | null =>
    quantities.length === 0 ? null : quantities.map((quantity) => show(quantity, units)).join(', ');
  const balanceUnits = flight.balance?.kind === 'share' ? unitPairs.share : unitPairs.size;
  return [
    [say.changedBefore, flight.changed],
    [say.setup, !tell.setup ? null : judged.setup === null ? say.firstSetup : say.setupNamed(judged.setup)],
    [say.round, flight.round],
    [say.watches, tell.watches ? flight.watches.map(watchText).join(', ') : null],
    [say.howTimed, words.timedBy[flight.timedBy]],
    [say.timekeepers, flight.timekeepers.length === 0 ? null : listed(flight.timekeepers)],
    [say.flyer, flight.flyer],
    [say.turns, several(flight.turns, unitPairs.turns)],
    [say.woundTo, several(flight.woundTo, unitPairs.turns)],
    [say.turnsLeft, several(flight.turnsLeft, unitPairs.turns)],
    [say.launchTorque, several(flight.launchTorque, unitPairs.torque)],
    [say.motorsRun, flight.motorsRun === null ? null : String(flight.motorsRun)],
    [say.launched, flight.launch === null ? null : words.launch[flight.launch]],
    [say.launchHeight, one(flight.launchHeight, unitPairs.height)],
    [say.release, release(flight, show)],
    [say.motorRun, one(flight.motorRun, unitPairs.time)],
    [say.height, one(flight.height, unitPairs.height)],
    [say.drop, one(flight.drop, unitPairs.height)],
    [
      say.behaviour,
      flight.behaviour.length === 0 ? null : listed(flight.behaviour.map((how) => words.behaviour[how])),
    ],
    [say.endedHow, flight.ended === null ? null : words.ended[flight.ended]],
    [say.damage, flight.damage],
    [say.flightMass, one(flight.mass, unitPairs.mass)],
    [say.balance, one(flight.balance, balanceUnits)],
    [say.weather, weather(flight.weather, show)],
    [say.rubberState, rubberState(flight, show)],
    [say.note, flight.note],
  ];
}

function release(flight: Flight, show: Show): string | null {
  if (flight.release === null) return null;
  const { how, stagger } = flight.release;
  const delay = stagger === null ? null : say.stagger(show(stagger, unitPairs.time));
  return [how, delay].filter((part) => part !== null).join(', ');
}

function weather(air: Weather | null, show: Show): string | null {
  if (air === null) return null;
  const parts: [string, Quantity | null, UnitPair][] = [
    [words.weather.wind, air.wind, unitPairs.wind],
    [words.weather.temperature, air.temperature, unitPairs.temperature],
    [words.weather.pressure, air.pressure, unitPairs.pressure],
    [words.weather.humidity, air.humidity, unitPairs.share],
    [words.weather.elevation, air.elevation, unitPairs.height],
  ];
  const shown = parts.flatMap(([label, quantity, units]) =>
    quantity === null ? [] : [`${label} ${show(quantity, units)}`],
  );
  return [...shown, ...(air.surface === null ? [] : [`${words.weather.surface} ${air.surface}`])].join(', ');
}

function rubberState(flight: Flight, show: Show): string | null {
  if (flight.rubber === null) return null;
  const { windsBefore, stretchedTo, temperature, wait } = flight.rubber;
  return [
    windsBefore === null ? null : say.windsBefore(windsBefore),
    stretchedTo === null ? null : say.stretchedTo(show(stretchedTo, unitPairs.plain)),
    temperature === null ? null : say.rubberTemperature(show(temperature, unitPairs.temperature)),
    wait === null ? null : say.wait(show(wait, unitPairs.time)),
  ]
    .filter((part) => part !== null)
    .join(', ');
}

/** The official time with its ±, such as "41.60 ± 0.11 s". */
export function officialText(record: FlightRecord): string {
  return secondsText(record.judged.official.seconds, record.judged.official.u);
}

/** The host of a link as pages name it; the link itself where it has none. */
export function hostOf(address: string): string {
  return URL.canParse(address) ? new URL(address).host || address : address;
}
