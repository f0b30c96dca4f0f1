import type { RuledValue } from '../../model/ruling.ts';
import type { Claim, Standing, Status, Unplaced } from '../standing.ts';

export interface FrozenRecord {
  readonly kind: 'best-time' | 'span';
  readonly division: string | null;
  readonly value: number;
  readonly entry: string;
  readonly flight: number;
  readonly date: string;
}

/** A result frozen by `close`: what `results/<challenge>.json` holds. Nothing re-ranks it. */
export interface FrozenResult {
  readonly format: 1;
  /** Version of the generator that froze it. */
  readonly generator: string;
  readonly closed: string;
  readonly challenge: {
    readonly id: string;
    readonly title: string;
    readonly opens: string;
    readonly closes: string;
    readonly state?: 'final' | undefined;
    /** Seconds, null where the rules had none; left out by results that do not tell. */
    readonly target?: number | null | undefined;
  };
  readonly standings: readonly Omit<Standing, 'u'>[];
  readonly divisions: Readonly<
    Record<string, readonly { readonly place: number; readonly entry: string; readonly score: number }[]>
  >;
  readonly claims: readonly Claim[];
  readonly unplaced: readonly Unplaced[];
  readonly records: readonly FrozenRecord[];
  readonly entries: readonly {
    readonly id: string;
    readonly name: string;
    readonly builders: readonly string[];
    readonly flights: readonly {
      readonly number: number;
      readonly date: string;
      /** Date, time of day and offset, where the builder stated them: `2027-05-09 18:40+01:00`. */
      readonly flown?: string | undefined;
      readonly official: number;
      readonly status: Status;
      readonly reason: string | null;
      /** In metres, of an accepted flight of a placed entry; left out where it is not known, and by results that do not tell. */
      readonly span?: number | undefined;
    }[];
    readonly facts: Readonly<Record<string, RuledValue>>;
  }[];
}
