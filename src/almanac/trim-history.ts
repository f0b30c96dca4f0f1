import { setupInForce } from '../figures/setup-in-force.ts';
import { type ThrowVerdict, throwVerdicts } from '../flight/throw-verdict.ts';
import type { CalendarDate } from '../model/calendar.ts';
import type { Behaviour, Setup } from '../model/entry.ts';
import type { Quantity } from '../quantities/quantity.ts';
import type { EntryRecord } from './almanac.ts';

/** A change of the aircraft itself. */
export interface SetupRow {
  readonly kind: 'setup';
  readonly date: CalendarDate | null;
  /** Id of the setup. */
  readonly setup: string | null;
  readonly changed: string | null;
}

/** A glide or a flight. */
export interface ThrowRow {
  readonly kind: 'glide' | 'flight';
  readonly date: CalendarDate | null;
  /** Of the flight; null for a glide. */
  readonly number: number | null;
  /** Id of the setup it was flown in; null for the entry as first written. */
  readonly setup: string | null;
  readonly changed: string | null;
  readonly balance: Balance | null;
  readonly behaviour: readonly Behaviour[];
  readonly verdicts: readonly ThrowVerdict[];
  /** As read for a glide; the official time of a flight stands in `seconds`. */
  readonly time: Quantity | null;
  readonly seconds: number | null;
}

export interface Balance {
  readonly at: Quantity;
  /** True where the throw states it, false where it is the setup's. */
  readonly own: boolean;
  /**
   * How far it lies behind that of the throw before, in m (or in chords where both are shares); negative: ahead of it.
   * Null where the two cannot be compared, and for the first.
   */
  readonly moved: number | null;
}

export type TrimRow = SetupRow | ThrowRow;

/**
 * What was changed, the balance, the behaviour and the time, of glides and flights in the order of their dates. On one
 * day the changes of setup come first, then the glides, then the flights by number: so a day at the field goes. A glide
 * without a date was thrown with the entry as first written, and stands before all others.
 */
export function trimHistory({ entry, flights }: Pick<EntryRecord, 'entry' | 'flights'>): readonly TrimRow[] {
  const rows: TrimRow[] = [
    ...entry.setups
      .slice(1)
      .map(({ id, from, change }): SetupRow => ({ kind: 'setup', date: from, setup: id, changed: change })),
    ...entry.glides.map((glide): ThrowRow => {
      const setup = entry.setups[glide.date === null ? 0 : setupInForce(entry.setups, glide.date)];
      return {
        kind: 'glide',
        date: glide.date,
        number: null,
        setup: setup?.id ?? null,
        changed: glide.note,
        balance: balanceOf(glide.balance, setup),
        behaviour: glide.behaviour,
        verdicts: throwVerdicts(glide.behaviour),
        time: glide.time,
        seconds: null,
      };
    }),
    ...flights.map(
      ({ flight, judged }): ThrowRow => ({
        kind: 'flight',
        date: flight.date.date,
        number: flight.number,
        setup: judged.setup,
        changed: flight.changed,
        balance: balanceOf(
          flight.balance,
          entry.setups.find(({ id }) => id === judged.setup),
        ),
        behaviour: flight.behaviour,
        verdicts: throwVerdicts(flight.behaviour),
        time: null,
        seconds: judged.official.seconds,
      }),
    ),
  ];
  // A stable sort of rows that already stand as setups, glides, flights keeps that order within a day.
  return withMoves(rows.sort((a, b) => order(a.date, b.date)));
}

function balanceOf(own: Quantity | null, setup: Setup | undefined): Balance | null {
  const at = own ?? setup?.design.inspected?.balance ?? setup?.design.balance ?? null;
  return at === null ? null : { at, own: own !== null, moved: null };
}

function withMoves(rows: readonly TrimRow[]): readonly TrimRow[] {
  let before: Quantity | null = null;
  return rows.map((row) => {
    if (row.kind === 'setup' || row.balance === null) return row;
    const { at } = row.balance;
    const moved = before !== null && before.kind === at.kind ? at.value - before.value : null;
    before = at;
    return { ...row, balance: { ...row.balance, moved } };
  });
}

function order(a: CalendarDate | null, b: CalendarDate | null): number {
  if (a === b) return 0;
  if (a === null) return -1;
  return b === null || a > b ? 1 : -1;
}
