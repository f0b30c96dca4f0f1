import { describe, expect, it } from 'vitest';
import { workedText } from '../../src/components/worked-text.ts';
import { evaluate } from '../../src/figures/evaluate.ts';
import { type FigureSet, isPresent } from '../../src/figures/figure.ts';
import { batch, flown, fullDesign, subject } from '../figures/example-design.ts';

const set = evaluate(
  subject({ design: fullDesign(), batches: new Map([['fen-a', batch()]]), flown: flown() }),
  'all',
);

function worked(figures: FigureSet, id: string): string {
  const figure = [figures.entry, ...figures.motors].map((map) => map.get(id)).find(isPresent);
  if (figure === undefined) throw new Error(`${id} is not there`);
  return workedText(figure).replaceAll('\u00a0', ' ');
}

describe('how a figure came about', () => {
  it('is its formula with the numbers put in', () => {
    expect(worked(set, 'decalage')).toBe('3° − 0° = 3°');
  });

  // The numbers are those of the example's own panels.
  it('else names each thing once, with all its values', () => {
    expect(worked(set, 'effective-dihedral')).toBe(
      "From the lengths of the wing's panels 900 mm and 737 mm; the chords of the wing's panels 300 mm and 180 mm; the dihedral of the wing's panels 3° and 18°.",
    );
  });

  it('leaves assumptions to their own words', () => {
    const text = worked(set, 'sink-speed');
    expect(text).toMatch(/^From flying mass .* g; wing area .* dm²/);
    expect(text).not.toMatch(/in general|folded|standard atmosphere/);
  });

  it('is told of every figure without a number that is not one', () => {
    for (const map of [set.entry, ...set.motors])
      for (const figure of [...map.values()].filter(isPresent))
        expect(workedText(figure)).toMatch(/^(?!.*(NaN|undefined|Infinity|e[+-]\d)).{5,}$/);
  });
});
