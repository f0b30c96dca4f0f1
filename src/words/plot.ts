import type { Better } from '../charts/plot/frontier.ts';
import { counted, listed } from './texts.ts';

/** An aircraft of a plot with its two values as text. */
interface Told {
  readonly name: string;
  readonly x: string;
  readonly y: string;
}

function aircraft(count: number): string {
  return counted(count, 'aircraft', 'aircraft');
}

export const plot = {
  menu: 'Plot',
  title: (challenge: string) => `Figures of ${challenge} against each other`,
  description: (challenge: string) =>
    `The aircraft of ${challenge} as points: any two figures against each other, with the frontier of the best.`,
  lead: 'Every aircraft is a point between two of its figures. How each figure came about stands on the page of the aircraft.',
  frontierExplained:
    'An aircraft is on the frontier of the best where nobody else shown equals it in both figures and betters it in one.',
  empty: 'No aircraft with figures has been entered yet.',
  notGiven: 'not given',
  differs: 'differs from motor to motor',
  choose: 'Choose two figures',
  across: 'Across',
  up: 'Up',
  logarithmic: 'Logarithmic',
  swap: 'Swap the axes',
  division: 'Tell apart',
  noDivision: 'No division',
  everywhere: 'Aircraft of all challenges',
  bars: 'Show the ±',
  groups: {
    airframe: 'Airframe',
    stability: 'Stability',
    rubber: 'Rubber',
    bench: 'Bench',
    glide: 'Glide',
    time: 'Flight',
    other: 'Other',
  },
  loading: 'The figures are being fetched.',
  failed:
    'The figures for this plot could not be fetched. Load the page again; the charts further down need nothing more.',
  shown: (shown: number, left: number, best: number) =>
    `${shown === 0 ? 'No aircraft' : aircraft(shown)} shown${left === 0 ? '' : `, ${left} left out`}${
      best === 0 ? '' : `, ${best} on the frontier`
    }.`,
  chart: {
    title: (x: string, y: string) => `${y} against ${x}`,
    description: (shown: number) =>
      `${shown === 0 ? 'No aircraft' : aircraft(shown)} as points. All of them stand in the table beside it.`,
  },
  frontier: (x: string, betterX: Better, y: string, betterY: Better) =>
    `The broken line is the frontier of the best, with ${betterX} “${x}” and ${betterY} “${y}” taken as better.`,
  noFrontier: (figures: readonly string[]) =>
    `No frontier is drawn: of ${listed(
      figures.map((name) => `“${name}”`),
      'and',
    )} neither more nor less is better in itself.`,
  oneOnFrontier: 'One aircraft is the best in both, so the frontier is a single point.',
  barsExplained: 'A bar is one standard uncertainty to each side.',
  key: {
    title: 'Marks',
    plain: 'aircraft',
    best: 'on the frontier',
    marked: (division: string) => `of the division “${division}”`,
    waiting: 'its time waits for a ruling, so it is not on the frontier',
  },
  onFrontier: 'on the frontier',
  waits: 'time waits for a ruling',
  table: 'Aircraft of the plot',
  aircraft: 'Aircraft',
  pointed: ({ name, x, y }: Told) => `${name}: ${x}, ${y}`,
  missing: 'Not shown',
  missingReason: (figure: string, reason: string) => `${figure}: ${reason}`,
  notOnLog: 'is not above zero, and a logarithmic axis has no place for it',
  ignored: {
    figure: (value: string, axis: string) =>
      `The address asks for “${value}” ${axis === 'x' ? 'across' : 'up'}, which is no figure that any of these aircraft has. The usual one is shown instead.`,
    log: (value: string) =>
      `The address asks for logarithmic axes “${value}”. It can name x, y or x,y; both axes are linear.`,
    division: (value: string) =>
      `The address asks for the division “${value}”, which does not exist here. None is told apart.`,
    challenges: (value: string) =>
      `The address asks for the challenges “${value}”. It can name all; only this challenge is shown.`,
    bars: (value: string) => `The address says bars are “${value}”. It can say shown; they are not shown.`,
  },
  fixed: {
    seen: (count: number, top: Told, low: Told, high: Told) =>
      count === 1
        ? `One aircraft only: ${top.name}, ${top.x} and ${top.y}. A single point shows no tendency.`
        : `${aircraft(count)}, from ${low.x} at the left (${low.name}, ${low.y}) to ${high.x} at the right (${high.name}, ${high.y}). Highest up stands ${top.name}: ${top.y} at ${top.x}.`,
    none: 'No aircraft has both figures yet.',
    table: (count: number) => `As a table: ${aircraft(count)}`,
    highestOnly: (count: number, figure: string) =>
      `The ${count} that stand highest (${figure}), from left to right.`,
    everyOne: 'The data as CSV have every one.',
    andMore: (count: number) => `and ${count} more`,
    loading: {
      heading: 'Time and wing loading',
      why: 'A lightly loaded wing flies slowly and sinks slowly, and so the same energy lasts longer. Against it stand the wind, and the rubber that a very light airframe cannot carry.',
      caution:
        'What cannot be concluded: that less loading alone would make any of these fly longer. They differ in size, rubber, trim and air as well, they are few, and only the best flight of each is drawn.',
    },
    energy: {
      heading: 'Time and energy per gram',
      why: 'Energy per gram is what the wound rubber can give, shared over all that must be carried. Of two aircraft with the same, the one that stands higher turned more of it into time.',
      caution:
        'What cannot be concluded: that a point high up shows skill alone, since rising air looks just the same. The energy is worked out from rubber and turns, and its ± is often wider than the distance between neighbours.',
    },
    turns: {
      heading: 'Seconds for each turn, and span',
      why: 'A larger model usually swings a larger and slower propeller, so that each turn of the motor lasts longer. Small ones wind many more turns and use them up faster.',
      caution:
        'What cannot be concluded: that long turns are better ones. A turn of a thick motor holds more energy than one of a thin motor, and the glide after the last turn counts in the time as well.',
    },
  },
} as const;
