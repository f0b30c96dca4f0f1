import { isClear, type PartName, partNames, type TimeSplit } from './time-ratio.ts';

/** What a split of two times lets one say. */
export interface Why {
  /** False where the two times are the same within their uncertainty. */
  readonly differs: boolean;
  /** Parts that clearly make the time longer, the largest first. */
  readonly longer: readonly PartName[];
  /** Parts that clearly make it shorter, the largest first. */
  readonly shorter: readonly PartName[];
  /** Parts that are the same within their uncertainty. */
  readonly alike: readonly PartName[];
  /** The part that by itself makes at least half of the difference, and clearly; null where none does. */
  readonly most: PartName | null;
  /** The part that by its number, clear or not, makes the time longest. */
  readonly largest: PartName;
}

/** Weighs the parts of a split whose first flight is the longer one. */
export function weigh({ total, parts }: TimeSplit): Why {
  const clear = partNames
    .filter((name) => isClear(parts[name]))
    .toSorted((a, b) => Math.abs(parts[b].ln) - Math.abs(parts[a].ln));
  const longer = clear.filter((name) => parts[name].ln > 0);
  const [first] = longer;
  const largest = partNames.toSorted((a, b) => parts[b].ln - parts[a].ln)[0]!;
  return {
    differs: isClear(total),
    longer,
    shorter: clear.filter((name) => parts[name].ln < 0),
    alike: partNames.filter((name) => !isClear(parts[name])),
    most: first !== undefined && parts[first].ln >= total.ln / 2 ? first : null,
    largest,
  };
}
