import type { FrozenResult } from './frozen.ts';

/**
 * A frozen result in which an entry that was renamed since goes by its name of today: places, flights and records stay with
 * the aircraft. A name that an entry bears today is always its own.
 */
export function underNamesOfToday(
  frozen: FrozenResult,
  entries: readonly { readonly id: string; readonly formerly: readonly string[] }[],
): FrozenResult {
  const today = new Map(entries.flatMap(({ id, formerly }) => formerly.map((old) => [old, id])));
  for (const { id } of entries) today.delete(id);
  if (!frozen.entries.some(({ id }) => today.has(id))) return frozen;
  const named = (id: string) => today.get(id) ?? id;
  const renamed = <Row extends { readonly entry: string }>(rows: readonly Row[]): Row[] =>
    rows.map((row) => ({ ...row, entry: named(row.entry) }));
  return {
    ...frozen,
    standings: renamed(frozen.standings).map((standing) => ({
      ...standing,
      withinTimingErrorOf: standing.withinTimingErrorOf.map(named),
    })),
    divisions: Object.fromEntries(Object.entries(frozen.divisions).map(([id, rows]) => [id, renamed(rows)])),
    claims: renamed(frozen.claims),
    unplaced: renamed(frozen.unplaced),
    records: renamed(frozen.records),
    entries: frozen.entries.map((entry) => ({ ...entry, id: named(entry.id) })),
  };
}
