import { type Entrant, entrantsOf } from '../../src/almanac/entrants.ts';
import { sealFlights } from '../../src/almanac/seal-flights.ts';
import type { Content } from '../../src/entries/folder/content.ts';
import { didYouMean } from '../../src/entries/problems/did-you-mean.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import type { Challenge } from '../../src/model/challenge.ts';

/** What a ruling is about: an entry in its challenge, and the file of its rulings. */
export interface Subject {
  readonly challenge: Challenge;
  readonly entrant: Entrant;
  /** Relative to the content folder. */
  readonly file: string;
  readonly isThere: boolean;
}

/** Why nothing can be ruled: a sentence, and the problems that stand in the way. */
export class CannotRule extends Error {
  readonly problems: readonly Problem[];
  constructor(message: string, problems: readonly Problem[] = []) {
    super(message);
    this.problems = problems;
  }
}

/** The entry that `<challenge>/<entry>` names, with everything that must be in order to rule on it. Throws CannotRule. */
export function subjectOf(content: Content, named: string): Subject {
  const [challengeId = '', entryId = '', more] = named.split('/');
  if (challengeId === '' || entryId === '' || more !== undefined)
    throw new CannotRule(
      `"${named}" names no entry: write the challenge and the entry, such as slow-thread-2026/calico.`,
    );
  const there = new Set(content.files.map(({ file }) => file));
  if (there.has(`results/${challengeId}.json`))
    throw new CannotRule(
      `The challenge ${challengeId} is final: its result is frozen in results/${challengeId}.json, and no ruling changes it any more.`,
    );
  const challenge = content.challenges.find(({ value }) => value.id === challengeId)?.value;
  if (challenge === undefined)
    throw cannotRead(content, `challenges/${challengeId}.md`, there, () => {
      const known = content.challenges.map(({ value }) => value.id);
      return `There is no challenge "${challengeId}"; there is ${known.join(', ') || 'none'}.${hint(challengeId, known)}`;
    });
  const entrants = entrantsOf(content, sealFlights);
  const entrant = entrants.find(
    ({ read }) => read.value.challenge === challengeId && read.value.id === entryId,
  );
  if (entrant === undefined)
    throw cannotRead(content, `entries/${challengeId}/${entryId}/entry.md`, there, () => {
      const known = entrants.map(({ read }) => read.value).filter((entry) => entry.challenge === challengeId);
      return `There is no entry "${entryId}" in ${challengeId}.${hint(
        entryId,
        known.map(({ id }) => id),
      )}`;
    });
  const file = `rulings/${challengeId}/${entryId}.md`;
  if (there.has(file) && entrant.contender.ruling === null)
    throw cannotRead(content, file, there, () => `${file} is not there.`);
  return { challenge, entrant, file, isThere: there.has(file) };
}

function cannotRead(
  content: Content,
  file: string,
  there: ReadonlySet<string>,
  missing: () => string,
): CannotRule {
  if (!there.has(file)) return new CannotRule(missing());
  return new CannotRule(
    `${file} cannot be read, so nothing is ruled and nothing is written. Mend it first.`,
    content.problems.filter((problem) => problem.file === file && problem.severity === 'error'),
  );
}

/** A hint at the nearest word, with a space in front; empty where none is near. */
function hint(word: string, known: readonly string[]): string {
  const near = didYouMean(word, known);
  return near === null ? '' : ` Did you mean "${near}"?`;
}
