import type { MarkKind } from '../charts/flight-marks.ts';
import type { EnergyItem } from '../figures/energy-account.ts';
import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords, shortDate } from './texts.ts';

export const charts = {
  inNumbers: 'In numbers',
  flights: {
    heading: 'Flight by flight',
    title: (name: string) => `Official times of ${name}, flight by flight`,
    description: (flights: number, shortest: string, longest: string, best: string | null) =>
      `${counted(flights, 'flight')} in the order in which they were flown, from ${shortest} to ${longest}. ${
        best === null ? 'None of them counts.' : best
      } The ledger of times lists every one.`,
    bestFlight: (number: number, time: string, date: CalendarDate, counts: boolean) =>
      `The best${counts ? '' : ' that may count'} is flight ${number} with ${time}, on ${dateInWords(date)}.`,
    explained: (bars: boolean, setups: boolean) =>
      [
        'Each flight stands above its number in the ledger of times, in the order flown; flights of one day are held together.',
        ...(setups ? ['An upright line marks a new setup of the aircraft.'] : []),
        bars
          ? 'An upright stroke through a mark is the ± of its time.'
          : 'The ± of a time is smaller than its mark.',
      ].join(' '),
    seconds: 'Official time (s)',
    days: (first: CalendarDate, last: CalendarDate) =>
      first === last ? dateInWords(first) : `${dateInWords(first)} to ${dateInWords(last)}`,
    day: shortDate,
    level: (time: string, label: string | null) => (label === null ? `Target ${time}` : `${time} · ${label}`),
    setup: (id: string | null) => id ?? 'as first entered',
    best: 'the best',
    target: 'the target',
    milestone: 'a milestone',
  },
  marks: {
    accepted: 'accepted',
    provisional: 'provisional',
    apart: 'does not count',
    attempt: 'attempt',
    struck: 'withdrawn, refused or void',
  } satisfies Record<MarkKind, string>,
  throws: {
    title: (name: string) => `Glide ratio of the test glides of ${name}`,
    description: (throws: number, low: string, high: string) =>
      `${counted(throws, 'throw')} with glide ratios from ${low} to ${high}. The table of the test glides has height and distance of each.`,
    explained: (moved: boolean) =>
      `Distance over height of each throw, ${
        moved ? 'above the balance it was thrown with' : 'in the order thrown'
      }. Full marks went cleanly, open ones did not; strokes are the ± of a single throw, a fifth at least.`,
    ratio: 'Glide ratio',
    balance: 'Balance behind the leading edge (mm)',
    balanceImperial: 'Balance behind the leading edge (in)',
    order: 'Throws, by date',
    day: (date: CalendarDate | null) => (date === null ? 'undated' : shortDate(date)),
  },
  bench: {
    heading: 'On the bench',
    torqueImperial: 'Torque, ozf·in',
    time: 'Time (s)',
    thrust: 'Thrust (N)',
    thrustImperial: 'Thrust (ozf)',
    mean: 'mean',
    flight: (number: number) => `flight ${number}`,
    ofMotor: (index: number, file: string) => `Motor ${index}: ${file}`,
    thrustTitle: (file: string) => `${file}: thrust against time, the model held still`,
    thrustDescription: (run: string, peak: string, mean: string | null) =>
      `The motor runs for ${run} and peaks at ${peak}${mean === null ? '' : `, ${mean} on average`}. The numbers stand in the table below.`,
    thrustExplained: (run: string, peak: string, mean: string) =>
      `Shaded is the run of ${run}; peak ${peak}, mean ${mean}. What the rig reads at rest is taken off.`,
    torqueExplained: (flight: number, turns: string) => `The ring is flight ${flight}, wound to ${turns}.`,
    torqueBeyond: (flight: number, turns: string, top: string) =>
      `The ring is flight ${flight}, wound to ${turns}: further than this log, which ends at ${top} turns.`,
    stretchExplained: (stretch: string, flight: number | null) =>
      `The ring is where the strands of this motor work ${
        flight === null ? 'wound as usual' : `on flight ${flight}`
      }, stretched to ${stretch} times their slack length; shaded is its ±. They give their energy back along the dashed line.`,
    stretchBeyond: (top: string) => `This test goes to ${top} times the slack length only.`,
    batch: (label: string) => `The rubber of this motor: ${label}`,
  },
  energy: {
    heading: 'Where the energy went',
    title: (name: string, flight: number) => `Where the energy of flight ${flight} of ${name} went`,
    items: {
      stored: 'Stored in the rubber',
      height: 'Height of the launch',
      left: 'Left in the turns',
      there: 'There to fly on',
      aloft: 'Staying up',
      propeller: 'Lost at the propeller',
      rest: 'The rest',
    } satisfies Record<EnergyItem, string>,
    several: 'Lost at the propellers',
    value: (energy: string, share: string) => `${energy} · ${share}`,
    // What is told first: how much there was, and how much of it became time.
    told: (flight: number, there: string, use: string) =>
      `Flight ${flight} had ${there} to fly on. Staying up took ${use} of it: weight × sinking speed × time.`,
    rest: {
      over: (rest: string, share: string) =>
        `The rest, ${rest} or ${share}, is what neither the time nor a propeller as good as usual accounts for: climb, trim, turbulence, and whatever the estimates miss.`,
      within: (rest: string) =>
        `The account comes out even within its ±: the rest, ${rest}, may as well be nothing.`,
      beyond: (rest: string) =>
        `Time and propeller together come to ${rest} more than there was: rising air gives what rubber does not, and several of these numbers are estimates.`,
    },
    bars: 'What is hatched is assumed; strokes are ±. The dotted line is all there was.',
    item: 'Energy',
    amount: 'Amount',
    share: 'Share of what there was',
    basis: 'Rests on',
    notWorkedOut: 'has not been worked out',
    absent: (reason: string) => `There is no account of the energy of this aircraft: it ${reason}.`,
  },
  predicted: {
    title: (name: string) => `Predicted time of ${name}, and the times flown`,
    heading: 'Predicted and flown',
    label: 'Official time (s)',
    band: (low: string, high: string) => `predicted ${low} to ${high}`,
    middle: (value: string) => value,
    description: (low: string, high: string, middle: string, flights: number, best: string | null) =>
      `The prediction is ${middle}, with a window from ${low} to ${high}. ${
        best === null
          ? 'No flight counts yet.'
          : `${counted(flights, 'counted flight')}, the best of ${best}.`
      }`,
    explained: (flight: number | null) =>
      `The window is twice the ± of the prediction to either side, for still air, good trim and ${
        flight === null ? 'motors wound as usual' : `the turns and the weather of flight ${flight}`
      }. Every flight that counts is shown; those with fewer turns had less to fly on.`,
  },
  use: {
    title: 'Energy use on this board',
    heading: 'Energy use on this board',
    label: 'Energy use (%)',
    band: (low: string, high: string) => `${low} to ${high}`,
    middle: (value: string) => `middle ${value}`,
    description: (models: number, low: string, high: string, middle: string, own: string | null) =>
      `${counted(models, 'model')} on this board reached from ${low} to ${high}, half of them ${middle} or less.${
        own === null ? '' : ` This aircraft reached ${own}.`
      }`,
    explained: (own: boolean) =>
      `A prediction takes the propeller’s efficiency for the energy use; this is what flights of this board made of their energy.${
        own ? ' This aircraft wears the ring.' : ''
      }`,
  },
} as const;
