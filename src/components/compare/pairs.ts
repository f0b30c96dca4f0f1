import type { Almanac, ChallengeRecord, EntryRecord } from '../../almanac/almanac.ts';
import { words } from '../../words.ts';
import { comparePath } from '../link.ts';

/**
 * The first two aircraft of a challenge in the order of its board: by place, then by what waits for a ruling. Looks no
 * further than it must: every aircraft's page asks.
 */
function firstTwo({ result, entries }: ChallengeRecord): EntryRecord[] {
  const found: EntryRecord[] = [];
  for (const { entry: id } of [...result.standings, ...result.claims]) {
    const record = entries.find(({ entry }) => entry.id === id);
    if (record !== undefined && !found.includes(record)) found.push(record);
    if (found.length === 2) break;
  }
  return found;
}

/** A challenge with the two aircraft that lead it. */
export interface FirstTwo {
  readonly home: ChallengeRecord;
  readonly pair: readonly [EntryRecord, EntryRecord];
}

/** The first two of every challenge that has two; of the one on the front page first. */
export function firstTwos({ challenges, featured }: Almanac): FirstTwo[] {
  const isFeatured = ({ challenge }: ChallengeRecord) => challenge.id === featured;
  return [...challenges.filter(isFeatured), ...challenges.filter((home) => !isFeatured(home))].flatMap(
    (home) => {
      const [first, second] = firstTwo(home);
      return first === undefined || second === undefined ? [] : [{ home, pair: [first, second] }];
    },
  );
}

/** Where an aircraft is compared with the leader of its challenge; the leader with the next. */
export function compareWay(home: ChallengeRecord, { entry }: EntryRecord): { label: string; path: string } {
  const [leader, next] = firstTwo(home);
  const leads = leader?.entry.id === entry.id;
  const other = leads ? next : leader;
  const idOf = (id: string) => `${home.challenge.id}/${id}`;
  if (other === undefined) return { label: words.compare.withAnother, path: comparePath([idOf(entry.id)]) };
  const say = leads ? words.compare.withNext : words.compare.withLeader;
  return { label: say(other.entry.name), path: comparePath([idOf(entry.id), idOf(other.entry.id)]) };
}
