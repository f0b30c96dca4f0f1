import { challengeAsFrozen } from '../contest/frozen/challenge-as-frozen.ts';
import type { FrozenResult } from '../contest/frozen/frozen.ts';
import { underNamesOfToday } from '../contest/frozen/under-names-of-today.ts';
import { historyOf } from '../contest/history/history.ts';
import { judge } from '../contest/judge.ts';
import type { Challenge } from '../model/challenge.ts';
import type { ChallengeRecord } from './almanac.ts';
import { awaitingOf } from './awaiting/awaiting-of.ts';
import { energyUsesOf } from './energy-uses.ts';
import type { Entrant } from './entrants.ts';
import { recordEntry } from './entry-record.ts';
import { explainPlaces } from './explained-places.ts';
import { fileToChange } from './file-to-change.ts';
import { textOfSection } from './peoples-text.ts';
import { todayIn } from './today.ts';
import { whenAsked } from './when-asked.ts';

/**
 * A challenge judged, with all that pages say of it.
 *
 * @param all the entrants of every challenge
 * @param juniors handles of everybody whom any file calls a junior
 */
export function recordChallenge(
  written: Challenge,
  all: readonly Entrant[],
  asFrozen: FrozenResult | null,
  juniors: ReadonlySet<string>,
  now: string,
): ChallengeRecord {
  const entrants = all.filter(({ contender }) => contender.entry.challenge === written.id);
  const frozen =
    asFrozen === null
      ? null
      : underNamesOfToday(
          asFrozen,
          entrants.map(({ contender }) => contender.entry),
        );
  const challenge = frozen === null ? written : challengeAsFrozen(written, frozen);
  const today = todayIn(now, challenge.timeZone);
  const contenders = entrants.map(({ contender }) => contender);
  const result = judge(challenge, contenders, { now: today, frozen });
  const history = whenAsked(() => historyOf(challenge, result, contenders, frozen));
  const awaiting = whenAsked(() => awaitingOf(challenge, contenders, result, today));
  const places = whenAsked(() =>
    explainPlaces(
      challenge,
      result,
      contenders.map(({ entry }) => entry),
      frozen,
    ),
  );
  const entries = entrants.map((entrant) =>
    recordEntry(
      entrant,
      result.entries.get(entrant.contender.entry.id)!,
      fileToChange(entrant, result.state, juniors),
    ),
  );
  const energyUses = whenAsked(() => energyUsesOf(result, entries));
  return {
    challenge,
    state: result.state,
    result,
    frozen,
    get places() {
      return places();
    },
    get history() {
      return history();
    },
    get awaiting() {
      return awaiting();
    },
    get energyUses() {
      return energyUses();
    },
    entries,
    // The front page shows the site's own text too: their footnotes must not meet.
    html: textOfSection(challenge.body, 'challenge-'),
  };
}
