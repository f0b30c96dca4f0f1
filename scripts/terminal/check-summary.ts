import type { Almanac } from '../../src/almanac/almanac.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';

/** What `check` counts; the keys of its JSON. */
export interface CheckSummary {
  readonly entries: number;
  readonly published: number;
  readonly 'left-out': number;
  readonly errors: number;
  readonly warnings: number;
}

/** Counts entries and problems; of those that `within` lets through, where only some files were asked for. */
export function checkSummary(
  almanac: Almanac,
  problems: readonly Problem[],
  within: (file: string) => boolean,
): CheckSummary {
  const published = almanac.challenges
    .flatMap(({ challenge, entries }) =>
      entries.map(({ entry }) => ({ challenge: challenge.id, entry: entry.id })),
    )
    .filter(({ challenge, entry }) => within(`entries/${challenge}/${entry}/entry.md`)).length;
  const leftOut = almanac.leftOut.filter(({ challenge, entry }) =>
    within(`entries/${challenge}/${entry}/entry.md`),
  ).length;
  return {
    entries: published + leftOut,
    published,
    'left-out': leftOut,
    errors: problems.filter(({ severity }) => severity === 'error').length,
    warnings: problems.filter(({ severity }) => severity === 'warning').length,
  };
}

/** The closing line of a run. */
export function summaryLine(summary: CheckSummary, notes: number): string {
  const parts = [
    counted(summary.entries, 'entry', 'entries'),
    ...(summary['left-out'] > 0 ? [`${summary['left-out']} left out`] : []),
    summary.errors === 0 ? 'no errors' : counted(summary.errors, 'error', 'errors'),
    ...(summary.warnings > 0 ? [counted(summary.warnings, 'warning', 'warnings')] : []),
    ...(notes > 0 ? [counted(notes, 'note', 'notes')] : []),
  ];
  return parts.join(', ');
}

/** Such as "1 entry" and "2 entries". */
export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
