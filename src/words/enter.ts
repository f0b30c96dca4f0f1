import { counted, listed } from './texts.ts';
import * as vocabulary from './vocabulary.ts';

const valueWords: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  control: vocabulary.control,
  onboard: vocabulary.onboard,
  origin: vocabulary.origin,
  layout: vocabulary.layout,
  rotation: vocabulary.rotation,
  after: vocabulary.afterRun,
  behaviour: vocabulary.behaviour,
  ended: vocabulary.ended,
  launch: vocabulary.launch,
  'timed-by': vocabulary.timedBy,
};

function counts(mistakes: number, gaps: number, doubts: number): string {
  return [
    ...(mistakes === 0 ? [] : [`${mistakes} to mend`]),
    ...(gaps === 0 ? [] : [`${gaps} to fill in`]),
    ...(doubts === 0 ? [] : [counted(doubts, 'doubt')]),
  ].join(' · ');
}

export const enter = {
  title: 'Enter an aircraft',
  menu: 'Enter',
  why: 'a form that checks what you measured and makes the file to hand in',
  description: (site: string) =>
    `Write down an aircraft and its flights for ${site}: the form checks every number and makes the file to hand in.`,
  intro:
    'Fill in what you measured, in the units you measured it in. The form checks it, draws the aircraft and makes the file that you hand in. Nothing leaves this page until you send it yourself.',

  withoutScripts:
    'The form needs scripts, and they are off. The same file can be written by hand: copy the example below, change it, and delete what you do not know.',
  changeWithoutScripts:
    'To add a flight to an aircraft that is entered already, take its file from its page (under its name: “Its file, entry.md”), write the flight behind the others, and hand the file in again.',
  readAs:
    'Below a number stands what was understood. Where you write no ±, it has the ± that follows from how it is written:',
  plainReadings: 'what a number without ± stands for.',
  byHandPlace: 'Save what you wrote as entry.md. On the site the file stands at',
  someChallenge: 'the-challenge',
  someName: 'name-of-the-aircraft',
  byHandFolder:
    'The last folder is yours to name, in small letters, digits and hyphens; it becomes part of the address of the page. Photos and logs stand beside the file.',
  byHandMail: 'Attach the file with your photos and logs, and say what the folder is to be called.',
  byHandPropose: 'Only if you have an account there: add the file at that place in a proposal of your own.',
  byHandAsk: 'Ask the organiser where to send it.',
  exampleHeading: 'A complete entry, to copy',
  exampleIntro:
    'One file, entry.md, is an aircraft with its flights. Only the name, the builder, the control, the span, a mass and one motor with its count must be there.',
  fieldTable: 'Every field that there is, and what it takes',

  start: 'The challenge',
  challenge: 'Which challenge is it for?',
  challengeState: (title: string, state: 'announced' | 'open' | 'closed' | 'final') =>
    state === 'open' ? title : `${title} (${state})`,
  noChallenge: 'No challenge is open or announced. An entry made now waits for the next one.',
  rules: 'Its rules',
  already: 'Have you entered already?',
  open: 'Open your entry.md',
  openHelp:
    'To add a flight or a change, press “Add a flight or change something” on the page of your aircraft, or open its file here. Whatever you do not touch stays as it stands, letter for letter.',
  opened: (name: string) => `${name} is open. Whatever you do not touch stays as it stands.`,
  notText: (name: string) =>
    `${name} is not text in UTF-8, so it was not opened. Save it as UTF-8 in your editor, then open it again.`,
  notToOpen: (address: string) =>
    `The file of ${address} could not be had from this site. Load the page again, or open the file from your own disk below.`,
  askOther: (kept: string, name: string) =>
    `This browser kept ${kept === '' ? 'an entry' : kept}, which you were writing. Open ${name} in its place? That can be taken back.`,
  askSame: (name: string) =>
    `This browser kept what you wrote for ${name} last time; it is below. Open the file as this site has it in its place? That can be taken back.`,
  openInPlace: 'Open the file of this site',
  keepHere: 'Keep what is here',
  draftThere: 'This browser kept what you wrote last time; it is below.',
  draftNone: 'This browser keeps what you write here, and nobody else sees it.',
  draftRefused: 'This browser refuses to keep what you write: download the file before you leave.',
  throwAway: 'Start afresh',
  thrownAway: 'Everything was thrown away.',
  takeBack: 'Take that back',
  takenBack: 'What was here before is back.',

  sections: {
    aircraft: 'Aircraft',
    wing: 'Wing',
    tail: 'Tail',
    mass: 'Mass and balance',
    motors: 'Motors',
    flights: 'Flights',
    built: 'Structure and trim',
    glides: 'Test glides',
    setups: 'Later setups',
    photos: 'Photos',
  },
  sectionHelp: {
    wing: 'The span, and one of three: the panels of one half (the most exact), the area, or the mean chord.',
    mass: 'One of the two: ready to fly without its rubber, or with it.',
    motors:
      'One part for each kind of motor. Of the rubber, any two of these give the third: strip with strands, made-up length, mass.',
    flights: 'Every flight that is to stand on the record. A flight keeps its number for ever.',
    setups:
      'What was changed on the aircraft later, from a date on. Fill in only what changed; everything else stays as it was.',
    photos:
      'The names of your picture files, and in a sentence what each shows, for readers who cannot see it. The pictures themselves are handed in beside the file.',
    glides: 'Unpowered test throws: they tell how the aircraft sinks.',
  } as Readonly<Record<string, string>>,
  batches: (batches: readonly { readonly id: string; readonly label: string | null }[]) =>
    batches.length === 0
      ? 'No batch of rubber is described on this site yet: leave “batch” empty and give the strip, or ask the organiser to describe yours.'
      : `Batches of rubber that this site describes: ${listed(batches.map(({ id }) => id))}. Of any other rubber leave “batch” empty and give its strip, or ask the organiser to describe it.`,
  beforeWinding: 'Before you wind:',
  safety: 'cautions that come before any time on the board.',
  more: (names: readonly string[]) => `More: ${listed(names)}`,
  fewNamed: 4,
  moreBesides: (names: readonly string[], others: number) => `More: ${names.join(', ')} and ${others} others`,
  filledIn: (count: number) => `${count} filled in`,
  /** How much is left, in the same words wherever it is told; empty where nothing is. */
  counts: (mistakes: number, gaps: number, doubts: number) => counts(mistakes, gaps, doubts),
  write: (value: string) => `Write ${value}`,
  /** What is said at a field where the sentence of the check speaks of the file. */
  toldAtField: {
    'missing-field': 'This is needed.',
    'empty-field': 'Nothing is written here.',
    'time-missing': 'Fill in “Time” where one watch was read, or “Watches” where several were.',
    'mass-missing': 'Fill in one of the two: ready to fly without its rubber, or with it.',
    'skein-incomplete': 'Fill in two of these: strip with strands, made-up length, mass.',
  } as Readonly<Record<string, string>>,

  needed: 'needed',
  such: (example: string) => `Such as ${example.length > 20 ? example : example.replaceAll(' ', '\u00a0')}`,
  none: 'not said',
  choose: 'choose one',
  /** What a field takes here besides what its description says, by its key. */
  besides: {
    pitch: 'A blade angle is typed with its radius: 28°\u00a0at\u00a0110\u00a0mm',
    batch: 'One that this site describes; else leave it empty',
    handle: 'If you have entered before, use the same one again',
  } as Readonly<Record<string, string>>,
  notWritten: 'Not in the file yet: it comes with the first field that is filled in.',
  oneInEach: 'One in each box; several with commas between them find their boxes',
  motorsInOrder:
    'Fill in the motors in their order: what stands here is taken once those before it are filled in.',
  /** Fields that take what the site has: an example from elsewhere would be refused. */
  ofSite: new Set(['batch', 'round']) as ReadonlySet<string>,
  anotherOf: (title: string) => `${title}, another`,
  nthOf: (title: string, number: number) => `${title}, number ${number}`,
  word: (key: string, word: string) => valueWords[key]?.[word] ?? word.replaceAll('-', ' '),
  item: {
    builder: 'Builder',
    panels: 'Panel',
    motors: 'Motor',
    flights: 'Flight',
    glides: 'Glide',
    setups: 'Setup',
    photos: 'Photo',
  } as Readonly<Record<string, string>>,
  itemNumber: (name: string, number: number) => `${name} ${number}`,
  ofItem: (field: string, item: string) => `${field} of ${item}`,
  add: (name: string, isFirst: boolean) => `Add ${isFirst ? 'a' : 'another'} ${name.toLowerCase()}`,
  remove: (name: string) => `Remove ${name.toLowerCase()}`,
  removed: (name: string) => `${name} was removed.`,
  name: 'Name',
  value: 'What to say',
  valueToo: (name: string) => `Say something of “${name}”, too: only then it is in the file.`,
  nameToo: (value: string) => `Give “${value}” a name, too: only then it is in the file.`,
  addNamed: (title: string) => `Add to ${title.toLowerCase()}`,
  odd: 'This stands in the text in a way that has no fields here. Change it in the text below.',
  understood: 'read as',

  junior:
    'A junior is shown by the handle alone: leave name and club empty, choose a handle that gives nobody away, and let an adult hand the file in. Publish no name, school, club, home field, face, voice or account of theirs, also not in videos and file names.',

  emptyNames: 'Empty name and club',
  emptied: 'Name and club are out of the file.',

  side: 'What it comes to',
  left: (mistakes: number, gaps: number, doubts: number) =>
    mistakes + gaps > 0
      ? counts(mistakes, gaps, doubts)
      : ['Nothing is left to mend: the file can be handed in.', counts(0, 0, doubts)].join(' ').trim(),
  inText: (line: number) => `line ${line} of the text`,
  noDrawingYet: 'The drawing and the figures appear once the span, a mass and one motor are filled in.',
  sketch: 'Without what is still to mend or to fill in.',
  flightTime: (number: number, time: string) => `Flight ${number}: ${time}`,
  canCount: 'can count',
  notRuledYet:
    'By the rules alone, as a new file: a flight counts once the organiser has ruled on it. Rulings that are there already are not looked at here.',
  flightAsks: (challenge: string) => `What ${challenge} asks of a flight`,
  limits: (challenge: string) => `What ${challenge} asks of the aircraft`,
  noLimits: 'The rules ask nothing of the aircraft itself.',
  limitMet: 'met',
  limitNotMet: 'not met',
  limitUnknown: 'not known yet',
  figures: 'Figures',
  figuresOfSetup: (id: string) => `Figures of setup ${id}`,
  moreFigures: 'Its page will show all figures and what they rest on.',

  body: 'In your own words',
  bodyHelp:
    'How it was built and what you learned. Markdown: a blank line begins a paragraph, a line that begins with # a heading. Raw HTML is not passed through.',
  text: 'The file as text',
  textHelp: 'This is the file. Fields and text are the same: what you change in one is changed in the other.',
  unreadable: (why: string) =>
    `The text cannot be read, so the fields show what stood before it broke. ${why}`,
  notPut: (why: string) => `This could not be put into the text, so both stay as they are. ${why}`,

  handIn: 'Hand it in',
  slug: 'Name of the folder',
  slugHelp: 'Part of the address of its page: small letters, digits and hyphens.',
  slugTaken: (address: string) =>
    `There is an entry of this name already (${address}). If it is yours, this file takes its place; else choose another name.`,
  slugMissing: 'The folder needs a name: it follows from the name of the aircraft.',
  place: 'By mail you need not think of folders. On the site the file stands at',
  download: 'Download entry.md',
  copy: 'Copy the text',
  copied: 'The text is copied.',
  notCopied: 'The browser did not let the page copy. The text is selected: copy it as you copy any text.',
  mail: (to: string) => `Mail it to ${to}`,
  mailShort: 'The mail opens with the file as its text. Attach your photos and logs, then send it.',
  mailLong:
    'The file is too long for a link: it is copied when you press this. Paste it into the mail, or attach the downloaded file, with your photos and logs.',
  mailSubject: (name: string, challenge: string) => `Entry: ${name}, for ${challenge}`,
  propose: (host: string) => `Propose it on ${host}, where the files of this site are kept`,
  proposeFilled:
    'Only if you have an account there. Opens the page for a new file with name and text filled in; it leads you through proposing the change. The text is copied as well, to paste where the page comes up empty.',
  proposeEmpty:
    'Only if you have an account there. Opens the page for a new file. The text is copied when you press this: paste it there.',
  proposeEdit:
    'Only if you have an account there. Opens the page on which the file is changed. The text is copied when you press this: replace everything there with it.',
  notYet: (count: number) =>
    `Something is still to mend or to fill in (${count}). You can hand the file in as it is, but it will not be published before it is mended.`,
  photosNext: 'Photos and bench logs come next',
  photosByForge: (host: string) =>
    `On ${host} put the pictures and logs into the same folder, under the names that the file gives them: open the folder in your proposal and add files there.`,
  photosByMail: 'Attach the pictures and logs to the mail, under the names that the file gives them.',
  photosKept:
    'Take the place out of the data of a photo first: the site publishes copies without it, but the file that you send stays in the history as it is. Ask the people in the picture.',
  uploadHere: 'Add files to its folder',
  whatNext:
    'What happens next: the organiser is shown what check finds, and takes the file over. Flights count once they have been looked at and ruled on.',

  filledInPart: 'filled in',
  barLeft: (mistakes: number, gaps: number, doubts: number) =>
    mistakes + gaps + doubts === 0
      ? 'Nothing is left to mend'
      : `${counts(mistakes, gaps, mistakes + gaps === 0 ? doubts : 0)}: next`,
  barMend: 'Next to mend',
  index: 'Parts of the form',
  barText: 'Text',
  barHandIn: 'Hand in',
} as const;
