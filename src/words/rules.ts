import type { CalendarDate } from '../model/calendar.ts';
import { counted, dateInWords, listed } from './texts.ts';

export const rules = {
  title: (challenge: string) => `Rules: ${challenge}`,
  lead: 'Written from the rules as data: these sentences and the board come from the same source.',
  sections: {
    dates: 'Dates',
    target: 'Target',
    eligibility: 'Which aircraft may enter',
    flying: 'Flying',
    timing: 'Timing',
    scoring: 'Scoring',
    tieBreaks: 'Equal scores',
    divisions: 'Divisions',
    rounds: 'Rounds',
    evidence: 'Evidence and acceptance',
    protests: 'Protests',
    amendments: 'Amendments',
    prose: 'In the organiser’s words',
    safety: 'Safety',
  },
  dates: (opens: CalendarDate, closes: CalendarDate) =>
    `Flights from ${dateInWords(opens)} to ${dateInWords(closes)} count, both days included, by the calendar date at the flying place.`,
  reportBy: (date: CalendarDate) => `A flight must be handed in by ${dateInWords(date)}.`,
  final: (date: CalendarDate) =>
    `The result is made final on or after ${dateInWords(date)}, and is frozen from then on.`,
  timeZone: (zone: string) => `Closing times are told in the time zone ${zone}.`,
  target: (time: string) => `An official time of ${time} or more reaches the target, with no tolerance.`,
  targetNamed: (time: string, label: string) =>
    `An official time of ${time} or more reaches the target “${label}”, with no tolerance.`,
  milestone: (time: string, label: string) => `Milestone at ${time}: ${label}.`,
  anyAircraft: 'Any rubber-powered aircraft may enter.',
  figure: (name: string, limit: string) => `${name}: ${limit}.`,
  fact: (name: string, allowed: readonly string[]) => `${name}: ${listed(allowed, 'or')}.`,
  onboard: (allowed: readonly string[]) =>
    allowed.length === 0
      ? 'Nothing may be carried on board.'
      : `Nothing may be carried on board but ${listed(allowed, 'or')}.`,
  junior: (yes: boolean) =>
    yes ? 'The builder is a junior; of a team, everyone.' : 'The builder is not a junior.',
  limitsExact: (included: readonly string[], excluded: readonly string[]) => {
    const quoted = (forms: readonly string[]) => listed(forms.map((form) => `“${form}”`));
    const ends = (forms: readonly string[], one: string, several: string) =>
      forms.length === 0 ? [] : [`${quoted(forms)} ${forms.length === 1 ? one : several}`];
    const parts = [
      ...ends(included, 'includes the value itself', 'include the values themselves'),
      ...ends(excluded, 'leaves the value itself out', 'leave the values themselves out'),
    ];
    return `Limits are compared without a tolerance: ${parts.join(', ')}.`;
  },
  launch: (ways: readonly string[]) => `The model is ${listed(ways, 'or')}.`,
  launchHeight: (limit: string) => `Launch height above the ground: ${limit}, where it is stated.`,
  drop: (limit: string) => `The landing may lie below the launch ground: ${limit}, where it is stated.`,
  together: 'All motors are released together: within half a second, or with no delay stated.',
  staged: 'Motors may be released one after another.',
  attempt: (time: string) =>
    `A flight shorter than ${time} is an attempt: it stays on record and does not count.`,
  maximum: (time: string) => `A longer flight than ${time} scores ${time}.`,
  perDay: (count: number) =>
    `At most ${counted(count, 'flight')} on one day. Every flight but a void one uses up the allowance.`,
  allowance: (count: number) =>
    `At most ${counted(count, 'flight')} in all. Every flight but a void one uses up the allowance.`,
  noFlying: 'There is no further limit on how the model is flown.',
  startsRelease: 'Timing starts when the model is released.',
  startsGround: 'Timing starts when the model leaves the ground.',
  touchdown: 'Timing stops when it touches down or comes to rest against anything.',
  outOfSight: (time: string) =>
    `If it is hidden for longer than ${time}, the time ends when it was last seen.`,
  combine: {
    mean: 'Where several watches were read, the official time is their mean.',
    median: 'Where several watches were read, the official time is their median.',
    lowest: 'Where several watches were read, the official time is the lowest.',
  },
  resolution: (step: string, round: 'down' | 'nearest') =>
    round === 'down'
      ? `The official time is rounded down to ${step}.`
      : `The official time is rounded to the nearest ${step}; a half rounds up.`,
  uncertainty: (watch: string, video: string) =>
    `One reading of a watch is taken to be right within ${watch}, one from a video within ${video} (standard uncertainty).`,
  scale: (figure: string, reference: string, power: number) =>
    `Each score is multiplied by (${figure} ÷ ${reference}) to the power ${power}.`,
  missing: 'Where fewer flights have been flown, the missing ones are zero.',
  apart: 'A flight that waits for a ruling is listed apart with the score it claims, and gives no place.',
  ranked: 'A flight that waits for a ruling is ranked, and marked provisional.',
  tieBreakLead: 'Among equal scores these decide, one after another; after that the place is shared.',
  noTieBreak: 'Equal scores share the place.',
  nextBest: 'The next best flight.',
  larger: (figure: string) => `The larger ${figure}, beyond what measuring can tell apart.`,
  smaller: (figure: string) => `The smaller ${figure}, beyond what measuring can tell apart.`,
  earlier: 'The score that was complete on the earlier day.',
  division: (name: string, conditions: readonly string[]) => {
    const all = conditions.join(' ');
    return all === ''
      ? `${name} – every aircraft.`
      : `${name} – ${all.charAt(0).toLowerCase()}${all.slice(1)}`;
  },
  noDivisions: 'All aircraft are ranked together.',
  round: (id: string, maximum: string, flyOff: boolean, dates: string) =>
    `${flyOff ? 'Fly-off' : 'Round'} ${id}: up to ${maximum}${dates}.`,
  roundDates: (from: CalendarDate | null, to: CalendarDate | null) =>
    from === null && to === null
      ? ''
      : `, flown ${from === null ? '' : `from ${dateInWords(from)}`}${from !== null && to !== null ? ' ' : ''}${to === null ? '' : `to ${dateInWords(to)}`}`,
  namesRound: (ids: readonly string[]) => `A flight names its round: ${listed(ids, 'or')}.`,
  flyOffs: 'Aircraft with every maximum go to the fly-offs, which alone decide between them.',
  timekeepers: (count: number) => `A flight needs ${counted(count, 'timekeeper')}.`,
  timekeepersOrVideo: (count: number) =>
    `A flight needs ${counted(count, 'timekeeper')}, or a video it was timed from.`,
  links: (count: number) => `A flight needs ${count === 1 ? 'a link' : `${count} links`} to its evidence.`,
  shows: (what: readonly string[]) => `The evidence should show ${listed(what)}.`,
  noEvidence: 'No evidence is demanded beforehand; the organiser may ask.',
  acceptance:
    'The organiser rules on each flight. A ruling holds for the flight as it was written; when what was written changes, the flight waits again.',
  shown: {
    launch: 'the launch',
    'whole-flight': 'the whole flight',
    landing: 'the landing',
    weighing: 'the weighing',
    span: 'the span being measured',
  } as Readonly<Record<string, string>>,
  protests: (time: string) => `A result may be protested for ${time}. Write to the organiser.`,
  protestsEnd: (last: CalendarDate, handedIn: boolean) =>
    `Counted from the last day for ${handedIn ? 'handing in flights' : 'flying'}, that is until the end of ${dateInWords(last)}.`,
  noProtests: 'No time for protests is set. Write to the organiser.',
  amendmentsExplained:
    'The rules as they stand here apply to every flight of the challenge, also to earlier ones. Changes made after the opening are listed below.',
  noAmendments:
    'The rules as they stand here apply to every flight of the challenge, also to earlier ones. Changes made after the opening would be listed here: there are none.',
  why: (why: string) => `Why: ${why}`,
  days: (count: number) => counted(count, 'day'),
  safetyLead: 'These come before any time on the board.',
  safety: [
    'A wound motor is stored energy: a hundred grams of rubber can hold more than a thousand joules. Wear eye protection.',
    'Nobody stands in the disc of a propeller or in line with a stretched skein.',
    'The stooge must hold three times the pull of the skein. Put a tube or a shield round a large motor. Check hook and knot before every winding.',
    'Never leave a model wound: unwind it on the winder. An adult is present when a junior winds.',
    'Fly clear of people, roads, power lines, livestock and airfields, with the landowner’s leave.',
    'Large or heavy models and anything with radio fall under local aviation and radio law and the national body’s rules, which come before anything written here.',
    'Blades and carbon splinters cut. Look after lithium cells. Leave a model that hangs in a power line where it is, and call the operator of the line.',
    'The organiser of an online challenge does not supervise your flying, and a place here is nobody else’s record.',
    'Figures of stability and of what a model could do are estimates; they are no certificate of airworthiness.',
  ],
} as const;
