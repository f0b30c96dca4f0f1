import type { Almanac, ChallengeRecord } from '../almanac/almanac.ts';
import { accentOnPaper } from '../components/accent.ts';
import { entryLookup } from '../components/board-rows.ts';
import { timeText } from '../components/measure.ts';
import { scoreText } from '../components/score-text.ts';
import { toldOfState } from '../components/state-told.ts';
import { words } from '../words.ts';
import { planPicture } from './plan-picture.ts';

/** A text that people wrote, and what is said instead where the typeface lacks one of its letters. */
export interface Said {
  readonly text: string;
  /** In letters every typeface has. */
  readonly plain: string;
}

/** One of the first places. */
export interface CardRow {
  readonly place: number;
  readonly aircraft: Said;
  readonly builders: readonly Said[];
  readonly score: string;
  /** What is to be known of the score; null for one that stands. */
  readonly note: string | null;
}

/** What the picture of a challenge shows: everything that can change it is in here. */
export interface Card {
  readonly challenge: string;
  readonly site: Said;
  readonly title: Said;
  readonly state: string;
  readonly target: Said | null;
  /** The first three of the board, with their places. */
  readonly rows: readonly CardRow[];
  /** What is said where nobody has a place yet. */
  readonly nobody: string | null;
  /** The first aircraft from above; null where nothing gives its wing a depth. */
  readonly plan: { readonly svg: string; readonly name: Said } | null;
  /** The club's colour, dark enough for paper; `#rrggbb`. */
  readonly accent: string;
}

/** How many places a card tells. */
const told = 3;

/** The card of a challenge as its board stands. */
export function cardOf(almanac: Almanac, record: ChallengeRecord): Card {
  const { challenge, result, state } = record;
  const { site } = almanac;
  const entries = entryLookup(almanac, record);
  const said = (id: string): Said => ({ text: oneLine(entries.name(id)), plain: id });
  const standings = result.standings.slice(0, told);
  const first = standings[0];
  const leader = first === undefined ? undefined : entries.record(first.entry);
  const svg = leader === undefined ? null : planPicture(leader);
  const { target } = challenge;
  return {
    challenge: challenge.id,
    site: { text: oneLine(site.title), plain: words.generator },
    title: { text: oneLine(challenge.title), plain: challenge.id },
    state: toldOfState(record).headline,
    target:
      target === null
        ? null
        : {
            text: words.challenge.target(
              timeText(target.time),
              target.label === null ? null : oneLine(target.label),
            ),
            plain: words.challenge.target(timeText(target.time), null),
          },
    rows: standings.map(({ place, entry, score, provisional }) => ({
      place,
      aircraft: said(entry),
      builders: entries.builders(entry).map(({ name, handle }) => ({ text: oneLine(name), plain: handle })),
      score: scoreText(challenge, score),
      note: provisional ? words.board.provisionalMark : null,
    })),
    nobody:
      standings.length > 0
        ? null
        : state === 'announced'
          ? words.challenge.waiting
          : record.entries.length === 0
            ? words.board.noEntries
            : words.board.noneYet,
    plan: svg === null || leader === undefined ? null : { svg, name: said(leader.entry.id) },
    accent: accentOnPaper(site.accent),
  };
}

/** Without line ends and without marks that show nothing themselves, such as those that turn the direction of writing. */
function oneLine(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[^\P{Cc}\s]|\p{Cf}/gu, '')
    .replace(/\s+/g, ' ')
    .trim();
}
