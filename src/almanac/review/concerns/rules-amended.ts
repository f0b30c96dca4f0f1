import type { CalendarDate } from '../../../model/calendar.ts';
import type { Challenge } from '../../../model/challenge.ts';
import { rulesAfterOpening } from '../../awaiting/rules-after-opening.ts';
import type { Concern } from '../concern.ts';
import { challengesOf } from '../reviewed-rules.ts';
import type { Sides } from '../side.ts';

/** Rules that change while their challenge is open, with the amendments that may tell of it. */
export function rulesAmended(
  sides: Sides,
  dayIn: (challenge: Challenge) => CalendarDate,
): readonly Concern[] {
  const before = challengesOf(sides.before);
  return [...challengesOf(sides.after)].flatMap(([id, challenge]) => {
    const was = before.get(id);
    if (was === undefined) return [];
    const versions = [
      { date: was.opens, version: null, challenge: was },
      { date: dayIn(was), version: null, challenge },
    ];
    return rulesAfterOpening(versions).map(
      (one): Concern => ({ kind: 'rules-changed-after-opening', challenge: id, ...one }),
    );
  });
}
