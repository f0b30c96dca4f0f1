import { counted, listed } from './texts.ts';

/** Parts of a time in the air, as they stand in a sentence. */
const parts = {
  height: { title: 'Energy height at launch', name: 'the energy height' },
  use: { title: 'Energy use', name: 'the energy use' },
  sink: { title: 'Sinking speed', name: 'the sinking speed' },
} as const;

type Part = keyof typeof parts;

const named = (names: readonly Part[]) => listed(names.map((name) => parts[name].name));
const first = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const compare = {
  title: 'Compare',
  heading: 'Compare aircraft',
  description: (site: string) =>
    `Aircraft of ${site} side by side: drawn to one scale, what differs, and why one flew longer.`,
  intro:
    'Two to four aircraft side by side: drawn to one scale, what differs beyond its ±, and what made one time longer than the other.',
  withoutScripts:
    'To choose aircraft, scripts have to be on. Below stand the first two of every challenge, compared already.',

  choose: 'Choose aircraft',
  search: 'Search by name or builder',
  pick: 'Aircraft',
  add: 'Add',
  option: (name: string, builders: string) => `${name}, by ${builders}`,
  found: (count: number, all: number) =>
    count === all ? `${counted(all, 'aircraft', 'aircraft')}.` : `${count} of ${all} aircraft.`,
  chosen: 'Chosen',
  remove: 'Remove',
  removeNamed: (name: string) => `Remove ${name}`,
  already: (name: string) => `${name} is among the chosen ones already.`,
  full: 'Four are chosen: remove one to add another.',
  oneMore: (name: string) => `${name} is chosen. Add one more to compare it with.`,
  compared: (names: readonly string[]) => `Compared: ${listed(names)}.`,
  noneChosen: 'None is chosen yet.',
  unknown: (ids: readonly string[]) =>
    `This site has no aircraft ${listed(
      ids.map((id) => `“${id}”`),
      'or',
    )}, so it was left out.`,
  tooMany: 'The address names more than four aircraft; the first four are compared.',
  loading: 'Fetching the figures.',
  failed: (name: string) =>
    `The figures of ${name} could not be fetched. Reload the page to try again; its own page has them all.`,

  yours: 'Side by side',
  firstTwo: 'The first two',
  firstTwoOf: (challenge: string) => `The first two of ${challenge}`,
  otherChallenges: 'In other challenges',
  noPair: 'Fewer than two aircraft have been entered in any challenge, so there is nothing to compare yet.',

  aircraft: 'Aircraft compared',
  builtBy: 'by',
  drawn: 'Drawn to one scale',
  notDrawn: (names: readonly string[]) => `Not drawn, for want of a chord or an area: ${listed(names)}.`,
  noDrawing: 'None of them has a chord or an area, so there is nothing to draw.',

  why: (longer: string) => `Why did ${longer} fly longer?`,
  whyNot: 'Why did one fly longer?',
  whyAgainst: (longer: string, shorter: string) => `${longer} against ${shorter}`,
  noSplit: (name: string, reason: string) => `The time of ${name} cannot be taken apart: it ${reason}.`,
  notPositive: 'One of the numbers is not above zero, so the ratio of the times cannot be taken apart.',
  ratio: (longer: string, shorter: string, factor: string, times: readonly [string, string]) =>
    `${longer} stayed up ${times[0]}, ${shorter} ${times[1]}: ${factor} times as long.`,
  sameTime: (one: string, other: string, times: readonly [string, string]) =>
    `${one} stayed up ${times[0]}, ${other} ${times[1]}: within twice its ± the time is the same, so there is nothing to explain.`,
  most: (part: Part, factor: string) =>
    `Most of the difference is ${parts[part].name}: by itself it makes the time ${factor} times as long.`,
  longer: (names: readonly Part[], most: boolean) =>
    most
      ? `${first(named(names))} ${names.length === 1 ? 'adds' : 'add'} to it beyond twice the ±.`
      : `Beyond twice its ±, ${named(names)} ${names.length === 1 ? 'makes' : 'make'} a part of the difference.`,
  shorter: (names: readonly Part[]) =>
    `${first(named(names))} ${names.length === 1 ? 'works' : 'work'} against it beyond twice the ±.`,
  alike: (names: readonly Part[]) =>
    `Within twice the ± ${named(names)} ${names.length === 1 ? 'is' : 'are'} the same.`,
  nothingClear: (largest: Part) =>
    `No part stands out from twice its ±; the largest, ${parts[largest].name}, may as well be nothing. The figures do not say why.`,
  useIsTheRest:
    'Energy use is worked out from the time itself: it is what height and sink leave to the propeller, the climb, the trim, the air, and the errors of both.',
  part: 'Part',
  makesTime: 'Factor on the time',
  inLogs: 'As a logarithm',
  partTitle: (name: Part) => parts[name].title,
  timeTitle: 'Time in the air',
  times: (factor: string) => `× ${factor}`,
  splitTable: (longer: string, shorter: string) => `Parts of the times of ${longer} and ${shorter}`,

  differs: 'What differs',
  figure: 'Figure',
  apart: 'Difference over its ±',
  apartExact: 'exact',
  differsExplained:
    'Figures further apart than twice the ± of their difference; what differs most for its ± stands first.',
  nothingDiffers: 'No figure differs by more than twice the ± of the difference.',
  alikeFigures: (count: number) => `${counted(count, 'figure')} the same within twice the ±`,
  aloneFigures: (count: number) => `${counted(count, 'figure')} that only one has, or none`,
  figuresTable: 'Figures that differ',
  alikeTable: 'Figures that are the same within their ±',
  aloneTable: 'Figures that cannot be compared',
  byKind: 'one for each kind of motor',

  written: 'Motors, building and flights',
  line: 'What',
  writtenTable: (title: string) => `${title}: what differs`,
  sameTable: (title: string) => `${title}: what is the same`,
  sameLines: (count: number) => `${counted(count, 'line')} the same for all`,
  allSame: 'All that was written of it is the same.',
  notSaid: 'not said',

  built: 'How it is built',
  motor: 'Motor',
  motorKind: (index: number) => `Motor, kind ${index}`,
  howMany: 'How many',
  flight: 'The flight compared',
  accepted: 'Accepted flights',
  acceptedCount: 'How many',
  nth: ['Best', 'Second best', 'Third best'],
  flightOn: (time: string, date: string) => `${time}, ${date}`,
  official: 'Official time',
  status: 'Status',
  flightNumber: (number: number, date: string) => `flight ${number}, ${date}`,
  number: 'Which',
  figuresOf: (setup: string, flight: number | null, provisional: boolean) =>
    flight === null
      ? `Figures of ${setup}, without a flight`
      : `Figures of ${setup} and flight ${flight}${provisional ? ', provisional' : ''}`,

  otherRules:
    'They were flown in different challenges: rules, timing and season may differ, so their times are compared with care.',

  how: 'How a ratio of times is taken apart',
  howText: [
    'A flight lasts as long as the energy lifts the model, for the share of it that turns into time, over the speed at which the model sinks. So the logarithm of a ratio of two times is the sum of three: of the energy height, of the energy use, and of the sinking speed with the sign turned.',
    'The energy height is the energy of the rubber at launch without that of the turns left at landing, over the weight, and the height of the launch above the landing. The sinking speed is that at the mass flown.',
  ],
  howSource: 'From the energy balance; ± by the law of propagation of uncertainty (JCGM 100:2008).',
  cannot: 'What it cannot say',
  cannotText: [
    'The energy use comes from the time. A sinking speed reckoned too low makes the use look too low by the same factor, so a large part of either, with the other against it, may be one error seen twice.',
    'The ± of two aircraft are taken as independent. Where both rest on the same assumption, such as the energy of a gram of rubber, their errors go the same way and the ± told here is too wide rather than too narrow.',
    'A difference is no cause: one flight in one air, and few aircraft. Rising air counts as a better use of the energy.',
  ],

  withLeader: (name: string) => `Compare with ${name}, the leader`,
  withNext: (name: string) => `Compare with ${name}, the next`,
  withAnother: 'Compare with another aircraft',
} as const;
