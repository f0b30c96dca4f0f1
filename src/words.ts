import type { Status } from './contest/standing.ts';
import type { Basis } from './figures/figure.ts';
import type { CalendarDate } from './model/calendar.ts';
import type { Fact } from './model/challenge.ts';
import type { AfterRun, Control, Layout, Onboard, OriginOfDesign, Rotation } from './model/design.ts';
import type { Behaviour, Weather } from './model/entry.ts';
import type { Verdict } from './model/ruling.ts';
import type { Floor } from './quantities/floors.ts';

// Every word the interface says, in one place and one language. Sentences with numbers are functions, so that a
// translation can order them its own way. What people wrote (names, notes, rules as sentences) is never here.

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A date in words, such as "9 May 2027" or "May 2027"; anything that is neither stays as it was written. */
export function dateInWords(date: CalendarDate): string {
  const [year, month, day] = date.split('-');
  const name = months[Number(month) - 1];
  if (year === undefined || name === undefined) return date;
  return day === undefined ? `${name} ${year}` : `${Number(day)} ${name} ${year}`;
}

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[], joint: 'and' | 'or' = 'and'): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${joint} ${items[items.length - 1]}`;
}

/** "1 flight", "2 flights". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

const control: Record<Control, string> = { free: 'free flight', guided: 'guided' };
const onboard: Record<Onboard, string> = {
  release: 'a release',
  dethermaliser: 'a dethermaliser',
  locator: 'a locator',
  altimeter: 'an altimeter',
  stabiliser: 'a stabiliser',
};
const origin: Record<OriginOfDesign, string> = {
  own: 'the builder’s own design',
  plan: 'built from a plan',
  kit: 'built from a kit',
};
const layout: Record<Layout, string> = {
  'tail-aft': 'tail behind the wing',
  canard: 'canard',
  tandem: 'tandem wings',
  tailless: 'tailless',
};
const rotation: Record<Rotation, string> = {
  clockwise: 'clockwise, seen from behind',
  anticlockwise: 'anticlockwise, seen from behind',
};
const afterRun: Record<AfterRun, string> = {
  folds: 'folds after the run',
  freewheels: 'freewheels after the run',
  stops: 'stops after the run',
  'never-stops': 'still turns at landing',
};
const behaviour: Record<Behaviour, string> = {
  clean: 'clean',
  stalled: 'stalled',
  dived: 'dived',
  'spiralled-left': 'spiralled to the left',
  'spiralled-right': 'spiralled to the right',
  rolled: 'rolled',
  gust: 'met a gust',
};
const ended = {
  ground: 'on the ground',
  obstacle: 'in an obstacle',
  water: 'on water',
  'out-of-sight': 'out of sight',
  dethermalised: 'by dethermaliser',
  caught: 'caught',
} as const;
const launch = { hand: 'thrown by hand', ground: 'off the ground', water: 'off water' } as const;
const timedBy = { watch: 'watch', video: 'video' } as const;
const status: Record<Status, string> = {
  withdrawn: 'withdrawn',
  void: 'void',
  refused: 'refused',
  'outside-dates': 'outside the dates',
  'reported-late': 'reported late',
  ineligible: 'does not count',
  attempt: 'attempt',
  accepted: 'accepted',
  provisional: 'provisional',
};
const statusExplained: Record<Status, string> = {
  withdrawn: 'The builder took it back; it stays on the record.',
  void: 'Struck from the count by a ruling; it uses up no allowance.',
  refused: 'The organiser refused it.',
  'outside-dates': 'It was flown outside the dates of the challenge.',
  'reported-late': 'It was handed in after the reporting deadline.',
  ineligible: 'It does not meet the rules of the challenge.',
  attempt: 'Too short to count: an attempt, on record.',
  accepted: 'The organiser accepted it; it counts.',
  provisional: 'It waits for the organiser’s ruling.',
};
const basis: Record<Basis, string> = {
  measured: 'measured',
  inspected: 'inspected',
  logged: 'from a bench log',
  'partly assumed': 'partly assumed',
};
const verdict: Record<Verdict, string> = { accepted: 'accepted', refused: 'refused', void: 'void' };
const fact: Record<Fact, string> = {
  control: 'Control',
  onboard: 'On board',
  layout: 'Layout',
  origin: 'Origin of the design',
  junior: 'Builder',
};
const weather: Record<keyof Weather, string> = {
  wind: 'wind',
  temperature: 'temperature',
  pressure: 'pressure',
  humidity: 'humidity',
  elevation: 'elevation',
  surface: 'surface',
};

export const words = {
  language: 'en',
  generator: 'Last Turn',
  control,
  onboard,
  origin,
  layout,
  rotation,
  afterRun,
  behaviour,
  ended,
  launch,
  timedBy,
  status,
  statusExplained,
  basis,
  verdict,
  fact,
  weather,

  frame: {
    skip: 'Skip to the content',
    navigation: 'Site',
    footer: 'About this site',
    logo: (name: string) => `Logo of ${name}`,
    home: (title: string) => `${title}, front page`,
    titled: (page: string, site: string) => (page === site ? site : `${page} · ${site}`),
    licence: (licence: string) => `What people contribute here is under ${licence}.`,
    madeWith: (generator: string) => `Made with ${generator} from files anyone may read.`,
    asOf: (date: CalendarDate) => `As of ${dateInWords(date)}.`,
    source: 'Source of this site',
    send: 'Send an entry by mail',
    scrollable: (name: string) => `${name}, table`,
  },

  pages: {
    board: 'Board',
    challenges: 'Challenges',
    rules: 'Rules',
    rubber: 'Rubber',
    figures: 'Figures',
    builders: 'Builders',
    news: 'News',
    leftOut: 'Left out',
  },

  challenge: {
    list: 'Every challenge of this club, the newest first.',
    none: 'No challenge has been announced yet.',
    entries: (count: number) => counted(count, 'aircraft', 'aircraft'),
    announced: (opens: CalendarDate) => `Announced: opens on ${dateInWords(opens)}.`,
    open: (closes: CalendarDate) => `Open until ${dateInWords(closes)}.`,
    closed: (closes: CalendarDate) =>
      `Closed since the end of ${dateInWords(closes)}. The board is provisional until the result is final.`,
    final: (closed: CalendarDate) =>
      `Final: this result was frozen on ${dateInWords(closed)} and no longer changes.`,
    finalPlain: 'Final: this result is frozen and no longer changes.',
    span: (opens: CalendarDate, closes: CalendarDate) =>
      `Flights of ${dateInWords(opens)} to ${dateInWords(closes)} count.`,
    reportBy: (date: CalendarDate) => `Flights must be handed in by ${dateInWords(date)}.`,
    finalOn: (date: CalendarDate) => `The result becomes final on or after ${dateInWords(date)}.`,
    target: (time: string, label: string | null) =>
      label === null ? `Target: ${time}` : `Target: ${time} (${label})`,
    leading: (name: string, score: string) => `${name} leads with ${score}.`,
    winner: (name: string, score: string) => `${name} won with ${score}.`,
    rulesLink: 'The rules',
    jsonLink: 'Data as JSON',
    csvLink: 'Data as CSV',
    boardLink: 'The board',
  },

  board: {
    standings: 'Standings',
    divisions: 'Divisions',
    division: (name: string) => `Division: ${name}`,
    emptyDivisions: (names: readonly string[]) =>
      `No aircraft has a counted flight yet in ${names.length === 1 ? 'this division' : 'these divisions'}: ${listed(names)}.`,
    place: 'Place',
    aircraft: 'Aircraft',
    builders: 'Builders',
    time: 'Time',
    score: 'Score',
    flights: 'Flight no.',
    noneYet: 'No flight counts yet.',
    noEntries: 'No aircraft has been entered yet.',
    target: (time: string, label: string | null) =>
      label === null ? `Target ${time}` : `${label}: target ${time}`,
    targetAbove: (count: number, over: boolean) =>
      count > 0 ? `reached by ${count}` : over ? 'not reached' : 'not reached yet',
    reached: 'reached the target',
    within: (names: readonly string[]) => `Inside timing error of ${listed(names)}`,
    withinMark: '≈',
    withinExplained:
      'The times of these aircraft differ by no more than the watches can tell apart (twice the combined standard uncertainty of both scores). The order stands; the difference may not.',
    tieBreak: (step: string) => `parted by ${step}`,
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
  },

  entry: {
    by: 'Built by',
    in: 'for',
    placed: (place: number, score: string, provisional: boolean) =>
      `Place ${place} with ${score}${provisional ? ', provisional' : ''}`,
    unplaced: (reason: string) => `Without a place: ${reason}`,
    claim: (score: string) => `If its waiting flights are accepted: ${score}`,
    entered: (date: CalendarDate) => `entered on ${dateInWords(date)}`,
    division: 'Divisions',
    alsoFlown: 'The same aircraft elsewhere',
    flownIn: (name: string, challenge: string) => `${name} in ${challenge}`,
    withdrawn: 'This aircraft has been withdrawn from the challenge.',
    withdrawnOn: (date: CalendarDate) => `It was withdrawn on ${dateInWords(date)}.`,
    withdrawnReason: (reason: string) => `Reason given: ${reason}`,
    disqualified: (reason: string, by: string, date: CalendarDate) =>
      `The organiser took it out of the standings on ${dateInWords(date)} (${by}): ${reason}`,
    planDrawing: 'Wing outline',
    outlinePanels: 'The wing from above, to scale, from the panels as measured.',
    outlineChord: 'The wing from above, to scale, drawn as a rectangle of its span and mean chord.',
    outlineNone: 'No chord or area was given, so the wing’s outline cannot be drawn.',
    outlineName: (name: string) => `Wing outline of ${name}`,
    times: 'Times',
    number: 'No.',
    date: 'Date',
    time: 'Time',
    status: 'Status',
    changed: 'What was changed',
    nothingChanged: '–',
    noFlights: 'No flight has been reported yet.',
    best: '· best',
    timesExplained: 'Official times. The ± of each stands with its flight.',
    scoreOf: (score: string, flights: readonly number[]) =>
      `Score: ${score}, of ${flights.length === 1 ? 'flight' : 'flights'} ${listed(flights.map(String))}`,
    motors: 'Motors',
    motor: (index: number, count: number) => `Kind ${index}: ${counted(count, 'motor')}`,
    oneKind: (count: number) => (count === 1 ? 'One motor' : `${count} motors of one kind`),
    facts: 'As measured',
    factsOf: (setup: string) => `As measured, ${setup}`,
    fact: 'Measure',
    metric: 'Metric',
    imperial: 'Imperial',
    nothingGiven: 'Nothing has been measured yet.',
    factsExplained: 'Each value with its standard uncertainty, once, in the first column of numbers.',
    howPlainReadings: 'Where the ± of a plain reading comes from',
    inspected: 'inspected',
    figures: 'Figures',
    figure: 'Figure',
    basis: 'Rests on',
    figuresOf: (setup: string, flight: number | null) =>
      flight === null ? `Worked out for ${setup}.` : `Worked out for ${setup} and flight ${flight}.`,
    provisionalFigures: 'No flight counts yet: the figures take the best provisional one.',
    assumed: (assumptions: readonly string[]) => `Assumed: ${assumptions.join('; ')}.`,
    shares: (shares: readonly { readonly input: string; readonly share: number }[]) => {
      const large = shares.filter(({ share }) => share >= 0.01).slice(0, 3);
      return large.length === 0
        ? ''
        : `Where most of the uncertainty comes from: ${large.map(({ input, share }) => `${input}, ${Math.round(share * 100)}\u00a0%`).join('; ')}.`;
    },
    absent: (count: number) => `${counted(count, 'figure')} cannot be worked out: what each needs`,
    figureGroups: {
      airframe: 'Airframe',
      stability: 'Balance and stability',
      rubber: 'Rubber and its energy',
      bench: 'On the bench',
      glide: 'Glide and power',
      time: 'Time',
    },
    figureRemarks: {
      'predicted-time': 'in still air and well trimmed',
      'ceiling-time': 'an upper bound for still air, no prediction',
    } as Readonly<Record<string, string>>,
    figuresOfMotors: 'Figures of each kind of motor',
    kind: (index: number) => `Kind ${index}`,
    howFigures: 'How each figure is worked out',
    workedFrom: (terms: readonly { readonly name: string; readonly values: readonly string[] }[]) =>
      `From ${terms.map(({ name, values }) => `${name} ${listed(values)}`).join('; ')}.`,
    counted: { motors: 'the number of motors', strands: 'the strands' },
    flights: 'Flights',
    flight: (number: number) => `Flight ${number}`,
    flightColumn: 'Flight',
    official: 'Official time',
    watches: 'Watches',
    howTimed: 'Timed by',
    reason: 'Reason',
    score: 'Score',
    setup: 'Setup',
    firstSetup: 'the aircraft as first entered',
    setupNamed: (id: string) => `setup ${id}`,
    turns: 'Turns at launch',
    woundTo: 'Wound to',
    turnsLeft: 'Turns left at landing',
    launchTorque: 'Torque at launch',
    launched: 'Launch',
    launchHeight: 'Launch height',
    drop: 'Landing below the launch ground',
    motorsRun: 'Motors run',
    release: 'Release',
    stagger: (time: string) => `stagger ${time}`,
    motorRun: 'Motor run',
    height: 'Highest seen',
    behaviour: 'Behaviour',
    endedHow: 'Ended',
    changedBefore: 'Changed since the flight before',
    damage: 'Damage',
    balance: 'Balance',
    flightMass: 'Mass',
    round: 'Round',
    weather: 'Weather',
    rubberState: 'Rubber',
    windsBefore: (count: number) =>
      count === 0 ? 'never wound before' : `wound ${counted(count, 'time')} before`,
    stretchedTo: (ratio: string) => `stretched to ${ratio} times its length`,
    rubberTemperature: (value: string) => `at ${value}`,
    wait: (time: string) => `wound ${time} before the launch`,
    timekeepers: 'Timekeepers',
    flyer: 'Flown by',
    evidence: 'Evidence',
    evidenceLink: (index: number, host: string) => `Link ${index}, on ${host}`,
    keptLink: (host: string) => `Copy kept on ${host}`,
    note: 'Note',
    figuresOfFlight: 'Figures of this flight',
    lapsed: (what: string, ruled: string, now: string) =>
      `Its acceptance waits to be confirmed: ${what} was ${ruled} when it was ruled, and is ${now} now.`,
    setups: 'Setups',
    setupsExplained:
      'What was changed on the aircraft itself, with the value before and after, and what it made of the figures.',
    before: 'Before',
    after: 'After',
    madeOfFigures: 'What it made of the figures',
    noValueChanged: 'No written value was changed.',
    flownInSetup: (flights: readonly number[]) =>
      flights.length === 0
        ? 'No flight was flown in it.'
        : `${flights.length === 1 ? 'Flight' : 'Flights'} ${listed(flights.map(String))}.`,
    from: (date: string) => `from ${date}`,
    firstEntered: 'As first entered',
    setupTitle: (id: string) => `Setup ${id}`,
    inForce: 'The figures on this page are of this setup.',
    rulings: 'Rulings',
    noRulings: 'The organiser has not ruled on a flight of this aircraft yet.',
    verdict: 'Verdict',
    ruledBy: 'By',
    ruledOn: 'Ruled on',
    seen: 'Seen on the evidence',
    waitsAgain: 'waits for a new ruling: what it rested on has changed since',
    seenOnAll: (what: string, flights: number) =>
      `Seen on the evidence${flights === 1 ? '' : ' of every flight'}: ${what}.`,
    ruledOfficial: (time: string) => `official time ${time}`,
    received: (date: CalendarDate) => `handed in ${dateInWords(date)}`,
    earlier: (verdict: string, by: string | null, date: CalendarDate | null, reason: string | null) =>
      `Earlier: ${verdict}${by === null ? '' : ` by ${by}`}${date === null ? '' : ` on ${dateInWords(date)}`}${reason === null ? '' : `: ${reason}`}`,
    second: (by: string, second: string) => `${by}, with ${second}`,
    inspections: 'Inspected',
    inspectedBy: (by: string, date: CalendarDate) => `by ${by} on ${dateInWords(date)}`,
    builderText: 'From the builder',
    photos: 'Photos',
    glides: 'Test glides',
    glideExplained: 'Unpowered throws from the hand.',
    distance: 'Distance',
    wind: 'Wind',
    direction: 'Direction',
    structure: 'Structure',
    trim: 'Trim',
    turn: 'Turn',
    warps: 'Warps',
    control: 'Control',
    onboard: 'On board',
    nothingOnboard: 'nothing',
    origin: 'Origin',
    layout: 'Layout',
  },

  facts: {
    groups: {
      wing: 'Wing',
      tail: 'Tail',
      masses: 'Masses and balance',
      thrustLine: 'Thrust line',
      built: 'How it is built',
    },
    span: 'Span',
    wingArea: 'Wing area',
    chord: 'Mean chord',
    incidence: 'Wing incidence',
    section: 'Wing section',
    panel: (index: number, what: string) => `Panel ${index}, ${what}`,
    panelLength: 'length',
    panelRoot: 'root chord',
    panelTip: 'tip chord',
    panelSweep: 'sweep of the leading edge',
    panelDihedral: 'dihedral',
    tailSpan: 'Tailplane span',
    tailArea: 'Tailplane area',
    tailArm: 'Tailplane arm',
    tailIncidence: 'Tailplane incidence',
    finArea: 'Fin area',
    finArm: 'Fin arm',
    finCount: 'Fins',
    balance: 'Balance behind the leading edge',
    balanceShare: 'Balance, of the mean aerodynamic chord',
    nose: 'Nose ahead of the leading edge',
    airframe: 'Airframe, without rubber',
    flying: 'Ready to fly, with rubber',
    rubberAll: 'All rubber',
    part: (name: string) => `Part: ${name}`,
    downThrust: 'Down-thrust',
    sideThrust: 'Side thrust, right positive',
    rotation: 'Rotation',
    faces: 'Faces',
    tractor: 'forward (tractor)',
    pusher: 'backward (pusher)',
    at: 'Either side of the centre line',
    side: { left: 'Left of the centre line', right: 'Right of the centre line' },
    place: 'Place',
    onCentre: 'on the centre line',
    hooks: 'Hook to peg',
    stripWidth: 'Strip width',
    stripThickness: 'Strip thickness',
    strands: 'Strands',
    skeinLength: 'Skein, made up and slack',
    skeinMass: 'Skein mass',
    batch: 'Batch of rubber',
    braided: 'Braided',
    yes: 'yes',
    no: 'no',
    lubricant: 'Lubricant',
    brokenIn: 'Broken in',
    breakTurns: 'Turns at which one broke',
    diameter: 'Propeller diameter',
    pitch: 'Propeller pitch',
    bladeAngle: 'Blade angle',
    bladeAngleAt: 'Blade angle taken at a radius of',
    blades: 'Blades',
    after: 'Propeller',
    thrustLog: 'Thrust log',
    torqueLog: 'Torque log',
    logAt: (file: string, turns: string) => `${file}, wound to ${turns}`,
    motorCount: 'Number of motors',
    ofMotor: (kind: number, what: string) => `Kind ${kind}: ${what}`,
  },

  rules: {
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
    tieBreakShort: {
      'next-best-flight': 'the next best flight',
      'earlier flight': 'the earlier flight',
      provisional: 'acceptance before a provisional time',
    } as Readonly<Record<string, string>>,
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
    protests: (time: string) =>
      `A result may be protested for ${time} after it is published. Write to the organiser.`,
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
  },

  builder: {
    all: 'Everyone who has entered an aircraft.',
    one: 'aircraft',
    many: 'aircraft',
    club: 'Club',
    aircraft: 'Aircraft',
    none: 'No aircraft yet.',
    junior: 'A junior: shown by handle only.',
    link: 'Own page',
    challenge: 'Challenge',
    result: 'Result',
    placeOf: (place: number, score: string) => `place ${place}, ${score}`,
  },

  trim: {
    history: 'Trim, throw by throw',
    explained:
      'Glides and flights in the order of their dates. What a throw says is a rule of thumb; a throw that met a gust says nothing.',
    throw: 'Throw',
    glide: 'Glide',
    firstSetup: 'first',
    moved: (distance: string, back: boolean) => `moved ${distance} ${back ? 'back' : 'forward'}`,
    verdicts: {
      glide: {
        'tail-heavy': 'tail-heavy, or too much angle between wing and tail',
        'nose-heavy': 'nose-heavy, or too little angle between wing and tail',
        left: 'turns left too tightly',
        right: 'turns right too tightly',
        rolled: 'one wing gives way: look for a warp',
        disturbed: 'says nothing: throw again',
      },
      flight: {
        'tail-heavy': 'tail-heavy, or too little down-thrust if it was under power',
        'nose-heavy': 'nose-heavy, or too much down-thrust if it was under power',
        left: 'turns left too tightly, in the glide or from the torque',
        right: 'turns right too tightly, in the glide or from the torque',
        rolled: 'one wing gives way: look for a warp, or too much torque',
        disturbed: 'says nothing of the trim',
      },
    },
    ballast: 'Weight in the nose for a static margin',
    ballastExplained:
      'What it takes to balance this aircraft at another static margin, with the weight as far forward as its builder says it can sit. An estimate to begin with: the throws have the last word. Where weight is to come out and none sits there, move something back.',
    marginWanted: 'Static margin wanted',
    shift: 'Balance moves',
    noseWeight: 'Weight in the nose',
    forward: 'forward',
    back: 'back',
    add: 'to add',
    takeOut: 'to take out',
    noBallast: (margins: readonly string[], reason: string) =>
      `No weight can be told for ${listed(margins)}: it ${reason}.`,
  },
  rubber: {
    lead: 'Batches of rubber strip that were tested, and what they gave back.',
    none: 'No batch of rubber has been described yet.',
    batch: 'Batch',
    strip: 'Strip',
    width: 'Strip width',
    thickness: 'Strip thickness',
    density: 'Density',
    made: 'Made',
    stretchTests: 'Stretch tests',
    torqueTests: 'Torque tests',
    length: 'Length',
    mass: 'Mass',
    temperature: 'Temperature',
    cycle: 'Cycle',
    broke: 'Broke',
    strands: 'Strands',
    tester: 'Tested by',
    date: 'Date',
    points: 'Points',
    log: 'Log',
    unread: 'log could not be read',
    figures: 'Figures of the batch',
    usedBy: 'Aircraft that fly on it',
    notUsed: 'No entered aircraft names this batch.',
    noTests: 'No test has been entered.',
    chart: {
      stretch: 'Stretched length ÷ slack length',
      force: 'Force in N, for strip of 1 g per metre',
      forceOut: 'Force out, N per g/m',
      forceBack: 'Force back, N per g/m',
      out: 'out',
      back: 'and back',
      broke: 'broke',
      turns: 'Turns still in',
      torque: 'Torque, N·mm',
      inNumbers: 'The curve in numbers',
      stretchTitle: (file: string) => `${file}: force against stretch`,
      stretchDescription: (top: number, back: boolean, broke: boolean) =>
        `Stretched to ${top.toFixed(2)} times its slack length${back ? ' and let back, on a lower curve' : ''}${broke ? '; it broke at that stretch' : ''}. The numbers stand in the table below.`,
      stretchExplained:
        'The area below a curve is energy in joules per gram of rubber: below the upper curve what was put in, below the dashed one what came back. What lies between warmed the strip.',
      torqueTitle: (file: string) => `${file}: torque against turns`,
      torqueDescription: (turns: number, torque: number) =>
        `Unwound from ${turns.toFixed(0)} turns, where it pulled with ${torque.toFixed(1)} N·mm. The numbers stand in the table below.`,
    },
  },

  figures: {
    lead: 'Every derived number on this site, what it means and how it is worked out. The ± is one standard uncertainty, carried through from what was measured.',
    of: { model: 'the model', flight: 'a flight', batch: 'a batch of rubber' } as const,
    scope: { entry: 'whole aircraft', motor: 'each motor', batch: 'batch' } as const,
    moves: 'What moves it',
    symbols: 'What the letters mean',
    source: 'Source',
    range: 'Holds for',
    unit: 'Unit',
    id: 'In data files',
    ofWhat: 'Of',
    pure: 'a pure number',
    contents: 'All figures',
    basisTitle: 'Basis',
    basisLead: 'Beside each figure stands what it rests on.',
    basisExplained: {
      measured: 'Everything it needs was measured by the builder.',
      inspected: 'Every measured input was checked by an official.',
      logged: 'A bench log or a test of the rubber entered.',
      'partly assumed': 'At least one default of the table below was used; the figure says which.',
    } satisfies Record<Basis, string>,
    plainReadings: 'The ± of a plain reading',
    plainReadingsLead:
      'A ± that somebody wrote is taken as it stands, as one standard uncertainty. Where none was written, the ± is the larger of two: the step of the last digit written, divided by √12, and the least value below for what it was measured with (common practice, no source). What is not listed has the first alone.',
    whatMeasured: 'What is measured',
    leastTaken: 'Least ±',
    ofValue: (share: string) => `${share} of it`,
    massReading: (share: string, coarse: string, fine: string) =>
      `the larger of ${share} of it and ${coarse}; ${fine} where hundredths of a gram were written`,
    readings: {
      span: 'Span',
      chord: 'Chords, panels and their sweep',
      area: 'Areas',
      arm: 'Arms of tail and fin',
      balance: 'Balance, from the leading edge',
      angle: 'Angles',
      mass: 'Masses',
      strip: 'Width and thickness of strip',
      'skein-length': 'Length of a skein',
      'break-turns': 'Turns at which a motor broke',
      'propeller-diameter': 'Propeller diameter',
      pitch: 'Propeller pitch',
    } satisfies Record<Floor, string>,
    defaults: 'Defaults',
    defaultsLead: 'Used only where an entry gives nothing, each with its own uncertainty.',
    default: 'Default',
    value: 'Value',
    why: 'Why',
    areas: {
      model: 'Figures of the model',
      flight: 'Figures of a flight',
      batch: 'Figures of rubber',
    } as const,
  },

  news: { none: 'No news yet.', about: 'About' },

  leftOut: {
    lead: 'Entries that could not be published as they are written now. Each one’s page says that it is being looked at; the rest of the site is not affected.',
    none: 'Nothing is left out: every entry that was handed in is published.',
    noticeTitle: (entry: string) => `Being looked at: ${entry}`,
    notice:
      'This entry is being looked at and is not shown for the moment. Nothing else on the site is affected by it.',
    toBoard: 'Go to the board',
    all: 'All entries that are being looked at',
  },

  moved: {
    title: 'This page has moved',
    lead: 'It is now at',
  },

  notFound: {
    title: 'Nothing stands at this address',
    lead: 'The address may be misspelt. An address this site has published once stays, or leads on.',
    home: 'Front page',
  },

  descriptions: {
    home: (title: string, club: string | null) =>
      club === null
        ? `${title}: an open duration challenge for rubber-powered model aircraft.`
        : `${title}: an open duration challenge of ${club} for rubber-powered model aircraft.`,
    board: (title: string) => `Standings of ${title}, with spans, loadings and times.`,
    rules: (title: string) =>
      `The rules of ${title}: dates, eligibility, flying, timing, scoring and evidence.`,
    entry: (name: string, builders: string, challenge: string) =>
      `${name} by ${builders} in ${challenge}: measures, motors, figures and every flight.`,
    builder: (name: string) => `Aircraft entered by ${name}.`,
    batch: (label: string) => `Rubber batch ${label}: strip, tests and figures.`,
    page: (title: string, site: string) => `${title}: a page of ${site}.`,
  },
} as const;
