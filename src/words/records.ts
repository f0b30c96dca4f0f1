import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords, shortDate, shortMonth } from './texts.ts';

export const records = {
  menu: 'Records',
  title: (challenge: string) => `Records of ${challenge}`,
  description: (challenge: string) =>
    `How the best time of ${challenge} grew, who reached the target, records by division and personal bests.`,
  lead: 'Told from accepted flights, by their official times: no cap and no handicap. An equal time or span does not take a record; the first holds.',
  frozen: 'Told from the result as it was frozen: nothing here changes any more.',
  none: (final: boolean) => (final ? 'No flight was accepted.' : 'No flight has been accepted yet.'),
  aircraft: 'Aircraft',
  builders: 'Builders',
  builder: 'Builder',
  date: 'Date',
  time: 'Time',
  gain: 'Gain',
  first: 'the first',
  flight: (number: number) => `flight ${number}`,
  best: 'The best time',
  bestTable: 'Flights that beat all before them',
  spanHeading: 'The largest span',
  spanExplained: (target: string | null) =>
    target === null
      ? 'Each accepted flight of an aircraft larger than all that flew before it.'
      : `Each flight of ${target} or more by an aircraft larger than all that had reached that before.`,
  spanNone: (target: string | null, final: boolean) =>
    target === null
      ? 'No accepted flight has a span that is known.'
      : final
        ? `No aircraft whose span is known reached ${target}.`
        : `No aircraft whose span is known has reached ${target} yet.`,
  span: 'Span',
  honour: 'Honour roll',
  honourExplained: (target: string) =>
    `Everyone who reached ${target}, in the order of first doing so. The official time decides, with no tolerance.`,
  honourNone: (target: string, final: boolean) =>
    final ? `Nobody reached ${target}.` : `Nobody has reached ${target} yet.`,
  firstReached: 'First reached',
  bestTime: 'Best time',
  times: 'Flights reaching it',
  milestones: 'Milestones',
  milestone: 'Milestone',
  firstBy: 'First by',
  passedBy: 'Passed by',
  passed: (entries: number) => counted(entries, 'aircraft', 'aircraft'),
  notPassed: (final: boolean) => (final ? 'not passed' : 'not passed yet'),
  records: (divisions: number) => (divisions === 0 ? 'Records that stand' : 'Records by division'),
  division: 'Division',
  all: 'All aircraft',
  longest: 'Longest time',
  largest: 'Largest span',
  nothing: '–',
  personal: 'Personal bests',
  personalExplained:
    'One line for each builder, all aircraft of this challenge taken together. A team’s flight counts for everyone in it.',
  start: 'First flight',
  improvements: 'Own best beaten',
  flights: 'Flights accepted',
  seasons: 'Earlier and later seasons',
  season: 'Challenge',
  winner: (final: boolean) => (final ? 'won by' : 'led by'),
  placing: 'Result',
  chart: {
    title: (challenge: string) => `Progress of the best time of ${challenge}`,
    description: (steps: number, others: number, best: string, on: CalendarDate) =>
      `A staircase of ${counted(steps, 'step')} that ends at ${best}, flown on ${dateInWords(on)}. ${
        others === 0
          ? 'No other flight has been accepted.'
          : `Small dots are the ${counted(others, 'other accepted flight')}.`
      } Every step stands in the table that follows.`,
    explained:
      'Every large dot beat all flights before it; small dots are the other accepted flights. Broken lines are the target and the milestones. Flights of one day stand in the order of their times of day where these are stated, else of their numbers.',
    seconds: 'Official time (s)',
    days: (first: CalendarDate, last: CalendarDate) =>
      first === last ? dateInWords(first) : `${dateInWords(first)} to ${dateInWords(last)}`,
    // A January is named by its year, so that a season over the turn of the year can be read.
    tick: (date: CalendarDate, names: 'month' | 'day') => {
      if (names === 'day') return shortDate(date);
      return date.slice(5, 7) === '01' ? date.slice(0, 4) : shortMonth(date);
    },
    mark: (time: string, label: string | null) => (label === null ? `Target ${time}` : `${time} · ${label}`),
  },
} as const;
