import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ignoredSentence } from '../../../src/client/plot/ignored-sentence.ts';
import {
  asksForAll,
  firstChoice,
  type PlotChoice,
  readChoice,
  writtenChoice,
} from '../../../src/client/plot/plot-choice.ts';

const known = {
  figures: new Set(['wing-loading', 'best-time', 'span', firstChoice.x]),
  divisions: new Set(['light', 'a&b']),
};

describe('the address of a plot', () => {
  it('reads what it names', () => {
    const search = '?x=span&y=best-time&log=x,y&division=light&challenges=all&bars=shown';
    expect(readChoice(search, known)).toEqual({
      choice: {
        x: 'span',
        y: 'best-time',
        logX: true,
        logY: true,
        division: 'light',
        everywhere: true,
        bars: true,
      },
      ignored: [],
    });
  });

  it('shows the first choice where it names nothing', () => {
    expect(readChoice('', known)).toEqual({ choice: firstChoice, ignored: [] });
  });

  it('takes the figures there are where the first choice is not among them', () => {
    const { choice } = readChoice('', { figures: new Set(['span', 'wing-area']), divisions: new Set() });
    expect([choice.x, choice.y]).toEqual(['span', 'wing-area']);
    const alone = readChoice('', { figures: new Set(['span']), divisions: new Set() }).choice;
    expect([alone.x, alone.y]).toEqual(['span', 'span']);
  });

  it('leaves names of others alone', () => {
    expect(readChoice('?from=letter&x=span', known).ignored).toEqual([]);
  });

  it.for([
    [
      '?x=spam',
      'The address asks for “spam” across, which is no figure that any of these aircraft has. The usual one is shown instead.',
    ],
    [
      '?y=__proto__',
      'The address asks for “__proto__” up, which is no figure that any of these aircraft has. The usual one is shown instead.',
    ],
    ['?log=z', 'The address asks for logarithmic axes “z”. It can name x, y or x,y; both axes are linear.'],
    [
      '?division=<b>',
      'The address asks for the division “<b>”, which does not exist here. None is told apart.',
    ],
    [
      '?challenges=some',
      'The address asks for the challenges “some”. It can name all; only this challenge is shown.',
    ],
    ['?bars=1', 'The address says bars are “1”. It can say shown; they are not shown.'],
  ])('says what it does with %s, and shows the usual', ([search, sentence]) => {
    const { choice, ignored } = readChoice(search!, known);
    expect(choice).toEqual(firstChoice);
    expect(ignored.map(ignoredSentence)).toEqual([sentence]);
  });

  it('is written in words that can be read and sent', () => {
    expect(writtenChoice({ ...firstChoice, x: 'span', y: 'best-time', logX: true, logY: true })).toBe(
      '?x=span&y=best-time&log=x,y',
    );
  });

  it('reads back whatever was chosen', () => {
    const figure = fc.constantFrom(...known.figures);
    const choices: fc.Arbitrary<PlotChoice> = fc.record({
      x: figure,
      y: figure,
      logX: fc.boolean(),
      logY: fc.boolean(),
      division: fc.constantFrom(null, ...known.divisions),
      everywhere: fc.boolean(),
      bars: fc.boolean(),
    });
    fc.assert(
      fc.property(choices, (choice) => {
        const search = writtenChoice(choice);
        expect(readChoice(search, known)).toEqual({ choice, ignored: [] });
        expect(asksForAll(search)).toBe(choice.everywhere);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('never stumbles over an address', () => {
    fc.assert(
      fc.property(fc.string(), (search) => {
        const { choice } = readChoice(`?${search}`, known);
        expect(known.figures.has(choice.x) && known.figures.has(choice.y)).toBe(true);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
