import type { JudgedEntry } from '../contest/standing.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { type ChartFrame, tenth } from './chart-parts.ts';
import { type MarkKind, markOf, markRadius } from './flight-marks.ts';
import { freeSeat } from './free-seat.ts';
import { legibleTicks } from './legible-ticks.ts';
import { type Level, type PlacedLevel, placeLevels } from './levels.ts';
import { type Box, boxOf, clippedName, type PlacedName, widthOfName } from './placed-name.ts';
import { linearScale, type Scale } from './scale.ts';
import type { Point } from './thinned.ts';

/** The words of the chart. */
export interface FlightsWords {
  readonly seconds: string;
  readonly days: (first: CalendarDate, last: CalendarDate) => string;
  readonly day: (date: CalendarDate) => string;
  readonly best: (seconds: number) => string;
  /** A setup's id; null for the aircraft as first entered. */
  readonly setup: (id: string | null) => string;
}

interface ShownFlight {
  readonly number: number;
  readonly date: CalendarDate;
  readonly seconds: number;
  readonly u: number;
  readonly kind: MarkKind;
  readonly best: boolean;
  readonly setup: string | null;
}

/** What the chart says, before anybody knows where it stands on paper: flights by date, on one day by number. */
export interface FlightsChart {
  readonly flights: readonly ShownFlight[];
  readonly levels: readonly Level[];
  readonly words: FlightsWords;
}

export interface FlightsLayout extends ChartFrame {
  readonly up: { readonly scale: Scale; readonly label: string };
  readonly marks: readonly (Point & { readonly kind: MarkKind; readonly best: boolean })[];
  /** From official time − u to + u, where that is more than the mark covers. */
  readonly bars: readonly { readonly x: number; readonly top: number; readonly bottom: number }[];
  /** Flight numbers below the axis, as many as can be read. */
  readonly numbers: readonly { readonly x: number; readonly text: string; readonly best: boolean }[];
  /** Flights of one day stand together; null where there is no room for its name. */
  readonly days: readonly { readonly from: number; readonly to: number; readonly name: NameBelow | null }[];
  /** Where the aircraft was changed. */
  readonly setups: readonly { readonly x: number; readonly name: PlacedName | null }[];
  readonly levels: readonly PlacedLevel[];
  readonly best: PlacedName | null;
  readonly label: string;
}

export interface NameBelow {
  readonly x: number;
  readonly text: string;
}

const frame: ChartFrame = { width: 480, height: 330, left: 48, right: 472, top: 34, bottom: 250 };

/** So much wider is the step from one day to the next than from flight to flight. */
const dayGap = 0.6;
/** A level this many times above the longest flight is left to the text: it would press the flights flat. */
const farAbove = 2;
/** In letters. */
const longestSetup = 16;

/** @param levels times with a name; those far above every flight are left out */
export function flightsChart(
  { flights, bestCounted, bestProvisional }: Pick<JudgedEntry, 'flights' | 'bestCounted' | 'bestProvisional'>,
  levels: readonly Level[],
  words: FlightsWords,
): FlightsChart {
  const best = bestCounted ?? bestProvisional;
  const longest = Math.max(0, ...flights.map(({ official }) => official.seconds));
  return {
    flights: flights
      .map(({ number, date, official, status, setup }) => ({
        number,
        date,
        seconds: official.seconds,
        u: official.u,
        kind: markOf(status),
        best: number === best,
        setup,
      }))
      .sort((a, b) => (a.date === b.date ? a.number - b.number : a.date < b.date ? -1 : 1)),
    levels: levels.filter(({ seconds }) => seconds <= farAbove * longest),
    words,
  };
}

/** Where everything stands. Without a flight there are axes only. */
export function layOutFlights({ flights, levels, words }: FlightsChart): FlightsLayout {
  const most = Math.max(
    0,
    ...flights.map(({ seconds, u }) => seconds + u),
    ...levels.map(({ seconds }) => seconds),
  );
  const scale = linearScale(0, most, frame.bottom, frame.top, 5);
  const places = placesAcross(flights);
  const marks = flights.map(({ seconds, kind, best }, index) => ({
    x: tenth(places[index]!),
    y: tenth(scale.at(seconds)),
    kind,
    best,
  }));
  const drawn = marks.map(boxOfMark);
  const best = nameOfBest(flights, marks, words, drawn);
  const taken = best === null ? [] : [boxOf(best)];
  const setups = placeSetups(flights, places, words, taken, drawn);
  for (const { name } of setups) if (name !== null) taken.push(boxOf(name));
  return {
    ...frame,
    up: { scale, label: words.seconds },
    marks,
    bars: flights.flatMap(({ seconds, u }, index) => {
      const top = scale.at(seconds + u);
      const bottom = scale.at(Math.max(0, seconds - u));
      return bottom - top > 2 * markRadius
        ? [{ x: marks[index]!.x, top: tenth(top), bottom: tenth(bottom) }]
        : [];
    }),
    numbers: legibleTicks(
      flights.map(({ number, best: first }, index) => ({ x: places[index]!, text: String(number), first })),
    ).map(({ x, text, first }) => ({ x: tenth(x), text, best: first })),
    days: placeDays(flights, places, words),
    setups,
    levels: placeLevels(levels, scale, frame, taken, drawn),
    best,
    label: flights.length === 0 ? '' : words.days(flights[0]!.date, flights.at(-1)!.date),
  };
}

/** Evenly, with a wider step where a new day begins; a single flight in the middle. */
function placesAcross(flights: readonly ShownFlight[]): readonly number[] {
  let at = 0.5;
  const steps = flights.map(({ date }, index) => {
    if (index > 0) at += flights[index - 1]!.date === date ? 1 : 1 + dayGap;
    return at;
  });
  const width = (frame.right - frame.left) / (at + 0.5);
  return steps.map((step) => frame.left + step * width);
}

function placeDays(
  flights: readonly ShownFlight[],
  places: readonly number[],
  words: FlightsWords,
): FlightsLayout['days'] {
  const days: { date: CalendarDate; from: number; to: number }[] = [];
  for (const [index, { date }] of flights.entries()) {
    const x = places[index]!;
    const day = days.at(-1);
    if (day?.date === date) day.to = x;
    else days.push({ date, from: x, to: x });
  }
  const named = days.map(({ date, from, to }, index) => {
    const text = words.day(date);
    const half = widthOfName(text) / 2;
    // A name at either end is pushed in, so that none is cut off.
    const x = Math.min(Math.max((from + to) / 2, half), frame.width - half);
    return { x, text, first: index === 0 || index === days.length - 1, from, to };
  });
  const kept = new Set(legibleTicks(named));
  return named.map((day) => ({
    from: tenth(day.from - markRadius),
    to: tenth(day.to + markRadius),
    name: kept.has(day) ? { x: tenth(day.x), text: day.text } : null,
  }));
}

function placeSetups(
  flights: readonly ShownFlight[],
  places: readonly number[],
  words: FlightsWords,
  others: readonly Box[],
  drawn: readonly Box[],
): FlightsLayout['setups'] {
  const taken = [...others];
  return flights.flatMap(({ setup }, index) => {
    if (index === 0 || flights[index - 1]!.setup === setup) return [];
    const x = tenth((places[index - 1]! + places[index]!) / 2);
    const name = freeSeat(seatsOfSetup(clippedName(words.setup(setup), longestSetup), x), taken, drawn);
    if (name !== null) taken.push(boxOf(name));
    return [{ x, name }];
  });
}

/** Beside the top of its line, the right side first; lower where another setup's name stands. */
function seatsOfSetup(text: string, x: number): readonly PlacedName[] {
  const width = widthOfName(text);
  return [14, 34, 54].flatMap((down) => {
    const y = frame.top + down;
    const right: PlacedName = { text, at: { x: x + 5, y }, anchor: 'start' };
    const left: PlacedName = { text, at: { x: x - 5, y }, anchor: 'end' };
    return [...(x + 5 + width <= frame.width ? [right] : []), ...(x - 5 - width >= frame.left ? [left] : [])];
  });
}

function nameOfBest(
  flights: readonly ShownFlight[],
  marks: readonly Point[],
  words: FlightsWords,
  drawn: readonly Box[],
): PlacedName | null {
  const index = flights.findIndex(({ best }) => best);
  const at = marks[index];
  if (at === undefined) return null;
  const text = words.best(flights[index]!.seconds);
  const width = widthOfName(text);
  const seats = [at.y - 12, at.y + 5, at.y + 24].flatMap((y): PlacedName[] => [
    { text, at: { x: tenth(at.x - 12), y: tenth(y) }, anchor: 'end' },
    { text, at: { x: tenth(at.x + 12), y: tenth(y) }, anchor: 'start' },
  ]);
  const inside = seats.filter(({ at: { x }, anchor }) =>
    anchor === 'end' ? x - width >= frame.left : x + width <= frame.width,
  );
  return freeSeat(inside, [], drawn);
}

function boxOfMark({ x, y }: Point): Box {
  const reach = markRadius + 1;
  return { left: x - reach, right: x + reach, top: y - reach, bottom: y + reach };
}
