import type { Almanac, ChallengeRecord, EntryRecord } from '../../almanac/almanac.ts';
import type {
  ComparedAircraft,
  ComparedFact,
  ComparedFacts,
  ComparedFigure,
  ComparedNumber,
  Shown,
} from '../../compare/aircraft.ts';
import type { JudgedEntry } from '../../contest/standing.ts';
import { planShape } from '../../drawings/plan-shape.ts';
import { type Figure, type FigureSet, isPresent } from '../../figures/figure.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { dateInWords, listed, words } from '../../words.ts';
import { shownBuilders } from '../builder-name.ts';
import { figureOrder } from '../figure-groups.ts';
import { flightFacts } from '../flight-facts.ts';
import { entryPath, link } from '../link.ts';
import {
  inBoth,
  type Measure,
  measureOf,
  measureOfFigure,
  plainInBoth,
  secondsAt,
  secondsText,
  withUIn,
} from '../measure.ts';
import { builtFacts, type FactRow, motorFacts } from '../measured-facts.ts';
import { resultTold } from '../result-told.ts';
import { figureName } from '../rule-sentences.ts';
import { type UnitPair, unitPairs } from '../units-shown.ts';

const say = words.compare;

/** One aircraft as a comparison shows it. */
export function comparedAircraft(
  almanac: Almanac,
  home: ChallengeRecord,
  record: EntryRecord,
): ComparedAircraft {
  const { entry, headline, judged, timeParts } = record;
  const { challenge } = home;
  const setup = headline.id === null ? words.entry.firstSetup : words.entry.setupNamed(headline.id);
  return {
    id: `${challenge.id}/${entry.id}`,
    name: entry.name,
    builders: buildersOf(almanac, record),
    challenge: { id: challenge.id, title: challenge.title },
    address: link(entryPath(challenge.id, entry.id)),
    result: resultTold(home, entry.id),
    figuresOf: say.figuresOf(
      setup,
      judged.bestCounted ?? judged.bestProvisional,
      judged.bestCounted === null,
    ),
    shape: planShape(headline.design, record.figures),
    span: spanOf(record.figures),
    flown: {
      told: timeTold(challenge, judged),
      time: numberOf(timeParts.time, 'time', unitPairs.time),
      use: numberOf(timeParts.use, 'share', unitPairs.share),
      height: numberOf(timeParts.height, 'length', unitPairs.height),
      sink: numberOf(timeParts.sink, 'speed', unitPairs.speed),
    },
    figures: figuresOf(record),
    facts: [
      ...motors(almanac, record),
      { title: say.built, facts: builtFacts(headline.design).flatMap((row) => factOf(row)) },
      ...flightCompared(record),
      accepted(home, record),
    ],
  };
}

/** The builders of an aircraft in one line; a junior by handle only. */
export function buildersOf(almanac: Almanac, { entry }: EntryRecord): string {
  return listed(shownBuilders(almanac, entry.builders).map(({ name }) => name));
}

/** The official time of the flight that the figures are of. */
function timeTold({ timing }: Challenge, { flights, bestCounted, bestProvisional }: JudgedEntry): string {
  const number = bestCounted ?? bestProvisional;
  const flown = flights.find((flight) => flight.number === number);
  return flown === undefined ? '' : secondsAt(flown.official.seconds, timing.resolution);
}

function spanOf(figures: FigureSet): Shown | null {
  const span = figures.entry.get('span');
  return isPresent(span) ? plainInBoth(measureOfFigure(span)) : null;
}

function numberOf(figure: Figure, kind: Kind, units: UnitPair): ComparedNumber {
  if (!isPresent(figure)) return { absent: figure.absent };
  const { value, u } = figure;
  return { value, u, shown: shown(measureOf(value, u, kind, units)) };
}

function shown(measure: Measure): Shown {
  return inBoth((system) => withUIn(measure, system));
}

/** Figures of the whole aircraft, and those of its motors where all are of one kind. */
function figuresOf({ figures }: EntryRecord): ComparedFigure[] {
  const [only] = figures.motors.length === 1 ? figures.motors : [];
  const ofKinds = only ?? figures.motors[0] ?? new Map<string, Figure>();
  const all = [
    ...figures.entry.values(),
    ...[...ofKinds.values()].map((figure) =>
      only === undefined ? { id: figure.id, unit: figure.unit, absent: say.byKind } : figure,
    ),
  ];
  return all
    .toSorted((a, b) => figureOrder(a.id) - figureOrder(b.id))
    .map((figure): ComparedFigure => {
      const named = { id: figure.id, name: figureName(figure.id) };
      if (!isPresent(figure)) return { ...named, absent: figure.absent };
      const { value, u, basis } = figure;
      return { ...named, value, u, basis: words.basis[basis], shown: shown(measureOfFigure(figure)) };
    });
}

function motors(almanac: Almanac, { headline }: EntryRecord): ComparedFacts[] {
  const kinds = headline.design.motors;
  const batches = new Map(almanac.batches.map(({ batch }) => [batch.id, batch.label]));
  return kinds.map((motor, index) => ({
    // The only kind of one aircraft stands beside the first of another.
    title: index === 0 ? say.motor : say.motorKind(index + 1),
    facts: [
      textFact(say.howMany, String(motor.count)),
      ...motorFacts(motor).flatMap((row) => factOf(row, batches)),
    ],
  }));
}

/** The flight that the figures are of, as it was flown. */
function flightCompared(record: EntryRecord): ComparedFacts[] {
  const { judged } = record;
  const number = judged.bestCounted ?? judged.bestProvisional;
  const flown = record.flights.find(({ flight }) => flight.number === number);
  if (flown === undefined) return [];
  const { official, status } = flown.judged;
  const told = flightFacts(flown, { setup: false, watches: false });
  const left: readonly string[] = [words.entry.timekeepers, words.entry.flyer, words.entry.note];
  return [
    {
      title: say.flight,
      facts: [
        textFact(say.number, say.flightNumber(flown.flight.number, dateInWords(flown.judged.date))),
        textFact(say.official, secondsText(official.seconds, official.u)),
        textFact(say.status, words.status[status]),
        ...told
          .filter(({ label }) => !left.includes(label))
          .map(({ label, text }) => ({ label, shown: text })),
      ],
    },
  ];
}

/** How many flights were accepted, and the longest of them. */
function accepted({ challenge }: ChallengeRecord, { judged }: EntryRecord): ComparedFacts {
  const longest = judged.flights
    .filter(({ status }) => status === 'accepted')
    .toSorted((a, b) => b.official.seconds - a.official.seconds);
  const shownOnes = say.nth.flatMap((label, place) => {
    const flight = longest[place];
    if (flight === undefined) return [];
    const time = secondsAt(flight.official.seconds, challenge.timing.resolution);
    return [textFact(label, say.flightOn(time, dateInWords(flight.date)))];
  });
  return { title: say.accepted, facts: [textFact(say.acceptedCount, String(longest.length)), ...shownOnes] };
}

function factOf(row: FactRow, batches?: ReadonlyMap<string, string>): ComparedFact[] {
  if ('text' in row) return [textFact(row.label, batches?.get(row.batch ?? '') ?? row.text)];
  const joined = inBoth((system) => row.measures.map((measure) => withUIn(measure, system)).join(', '));
  return [{ label: row.label, shown: joined }];
}

function textFact(label: string, text: string): ComparedFact {
  return { label, shown: { metric: text, imperial: text } };
}
