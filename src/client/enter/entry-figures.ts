import { evaluate } from '../../figures/evaluate.ts';
import type { FigureSet } from '../../figures/figure.ts';
import { thrownGlides } from '../../figures/thrown-glides.ts';
import type { Batch } from '../../model/batch.ts';
import type { Entry, Setup } from '../../model/entry.ts';

/** Standard uncertainty of a hand-held watch where no rules say it, s: the default of the content format. */
const watch = 0.1;

/** The latest setup of an entry with its figures of the model. Bench logs are files of their own: nothing rests on them here. */
export function latestFigures(
  entry: Entry,
  batches: readonly Batch[],
): { readonly setup: Setup; readonly figures: FigureSet } {
  const place = entry.setups.length - 1;
  const setup = entry.setups[place] ?? entry.setups[0];
  const figures = evaluate(
    {
      design: setup.design,
      batches: new Map(batches.map((batch) => [batch.id, batch])),
      logs: { thrust: new Map(), torque: new Map() },
      glides: thrownGlides(entry, entry.setups, place, watch),
      mass: null,
      flown: null,
    },
    'model',
  );
  return { setup, figures };
}
