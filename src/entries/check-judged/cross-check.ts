import type { CalendarDate } from '../../model/calendar.ts';
import type { Challenge, ChallengeState } from '../../model/challenge.ts';
import type { Problem } from '../problems/problem.ts';
import { nodeAt } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import type { EntryWithFigures } from './with-figures.ts';

/** One entry with its verdicts and figures, and the files it was read from. */
export interface Crossed {
  readonly record: EntryWithFigures;
  /** Its entry.md. */
  readonly source: SourceDocument;
  /** The file of its rulings, where there is one. */
  readonly rulings: SourceDocument | null;
  readonly challenge: Challenge;
  readonly state: ChallengeState;
  /** The day of the build at the challenge's place. */
  readonly today: CalendarDate;
}

/**
 * A check that needs verdicts or figures beside what was written. What it finds is for the builder and the organiser, in
 * neutral words: no page shows it.
 */
export type CrossCheck = (crossed: Crossed) => readonly Problem[];

/** Where a flight stands in its file, or where its ruling does: `flights` and the index of the number given. */
export function pathOfFlight(
  source: SourceDocument,
  number: number,
  key: 'number' | 'flight' = 'number',
): Path {
  const flights = nodeAt(source, ['flights']);
  const index =
    flights?.kind === 'list'
      ? flights.items.findIndex((_, at) => {
          const node = nodeAt(source, ['flights', at, key]);
          return node?.kind === 'scalar' && Number(node.text) === number;
        })
      : -1;
  return index < 0 ? ['flights'] : ['flights', index, key];
}
