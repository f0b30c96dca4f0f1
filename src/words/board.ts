import { counted, listed } from './texts.ts';

/** So many aircraft are named before the others are only counted. */
const mostNamed = 3;

function shortened(names: readonly string[]): readonly string[] {
  const others = names.length - mostNamed;
  return others < 2 ? names : [...names.slice(0, mostNamed), `${others} others`];
}

export const board = {
  standings: 'Standings',
  divisions: 'Divisions',
  division: (name: string) => `Division: ${name}`,
  aircraftIn: (count: number) => counted(count, 'aircraft', 'aircraft'),
  emptyDivisions: (names: readonly string[]) =>
    `No aircraft has a counted flight yet in ${names.length === 1 ? 'this division' : 'these divisions'}: ${listed(names)}.`,
  place: 'Place',
  aircraft: 'Aircraft',
  builders: 'Builders',
  time: 'Time',
  score: 'Score',
  flights: 'Flights counted',
  noneYet: 'No flight counts yet.',
  noEntries: 'No aircraft has been entered yet.',
  target: (time: string, label: string | null) =>
    label === null ? `Target ${time}` : `${label}: target ${time}`,
  targetAbove: (count: number, over: boolean) =>
    count > 0 ? `reached by ${count}` : over ? 'not reached' : 'not reached yet',
  reached: 'reached the target',
  within: (names: readonly string[]) => `Inside timing error of ${listed(shortened(names))}`,
  withinMark: '≈',
  withinExplained:
    'The times of these aircraft differ by no more than the watches can tell apart (twice the combined standard uncertainty of both scores). The order stands; the difference may not.',
  why: (place: number) => `How place ${place} came about`,
  whyExplained: 'The mark beside a name unfolds how its place came about.',
  reachedMark: '✓',
  reachedExplained: 'The target was reached in a counted flight.',
  provisionalMark: 'provisional',
  provisionalExplained: 'A provisional score rests on a flight that waits for the organiser’s ruling.',
  uncertaintyExplained: 'The ± of each time and figure stands on the aircraft’s page.',
  claims: 'If accepted',
  claimsExplained:
    'Flights that wait for a ruling do not move anyone’s place. This is the score each of these aircraft would have if all its waiting flights were accepted.',
  claimedScore: 'Score, if accepted',
  claimFlights: 'Flight no.',
  unplaced: 'Without a place',
  reason: 'Reason',
  leftOutEntry: 'page being looked at',
  scaled: 'Scores are scaled by the handicap of the rules.',
  of: (method: 'best' | 'sum' | 'mean' | 'rounds', flights: number) =>
    ({
      best: 'The score is the best counted flight.',
      sum: `The score is the sum of the best ${counted(flights, 'flight')}.`,
      mean: `The score is the mean of the best ${counted(flights, 'flight')}.`,
      rounds: 'The score is the sum of the best flight of each round.',
    })[method],
  flightNumbers: (numbers: readonly number[]) => numbers.join(', '),
} as const;
