import type { ComparedVariant, Comparison } from '../../src/contest/compare/compare-rules.ts';
import type { Move } from '../../src/contest/compare/moves.ts';
import { scoreText } from '../../src/contest/ranking/score-in-words.ts';
import type { Standing } from '../../src/contest/standing.ts';
import type { Challenge } from '../../src/model/challenge.ts';

/** The table as it stands, then one line for each variant with who moves. */
export function comparisonText(challenge: Challenge, comparison: Comparison, isFrozen: boolean): string {
  const { board, variants } = comparison;
  const width = Math.max(0, ...variants.map(({ id }) => id.length));
  return [
    `${challenge.title}: ${board.length} with a place under the rules as they are`,
    ...(isFrozen
      ? ['The result of this challenge is frozen. What follows is what would have been; nothing changes.']
      : []),
    ...board.map((row) => tableLine(challenge, row)),
    '',
    ...(variants.length === 0 ? ['Every rule asked for is a rule of this challenge already.'] : []),
    ...variants.map((variant) => `${variant.id.padEnd(width)}  ${movesText(variant)}`),
    '',
  ].join('\n');
}

/** The whole table under one variant, with the place before. */
export function variantText(variant: ComparedVariant, board: readonly Standing[]): string {
  const before = new Map(board.map(({ entry, place }) => [entry, place]));
  const unchanged = 'as before';
  const rows = variant.standings.map((row) => {
    const was = before.get(row.entry);
    const told = was === undefined ? 'had no place' : was === row.place ? unchanged : `was ${was}`;
    return `${tableLine(variant.challenge, row)}  ${told}`;
  });
  const dropped = variant.moved
    .filter(({ after }) => after === null)
    .map(({ entry, before: was }) => `   –  ${entry}  has no place; was ${was}`);
  return [variant.id, movesText(variant), ...rows, ...dropped, ''].join('\n');
}

function tableLine(challenge: Challenge, row: Standing): string {
  return `${String(row.place).padStart(4)}  ${row.entry}  ${scoreText(challenge, row.score)}`;
}

function movesText({ moved, newlyShared }: ComparedVariant): string {
  if (moved.length === 0 && newlyShared.length === 0) return 'nobody moves';
  const shared = newlyShared.map(({ place, entries }) => `${entries.join(', ')} share place ${place}`);
  return [
    `${moved.length} move${moved.length === 1 ? 's' : ''}: ${moved.map(moveText).join(', ')}`,
    ...shared,
  ].join('; ');
}

function moveText({ entry, before, after }: Move): string {
  return `${entry} ${before ?? 'no place'} → ${after ?? 'no place'}`;
}
