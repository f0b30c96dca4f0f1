import rehypeParse from 'rehype-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { toMathML } from '../../src/figures/formula.ts';
import { linesText, symbolsOfLines } from '../../src/figures/formula-line.ts';
import { figureDefinition, figureDefinitions } from '../../src/figures/registry.ts';
import * as letters from '../../src/figures/symbols.ts';

/** How many children an element of MathML Core takes (W3C, sections 3.3 and 3.4). */
const arity: Readonly<Record<string, number>> = { mfrac: 2, msub: 2, msup: 2 };
const leaves = ['mi', 'mn', 'mo', 'mtext', 'mspace'];

interface Element {
  readonly type: string;
  readonly tagName?: string;
  readonly children?: readonly Element[];
  readonly value?: string;
}

/** Every element with its parent's name; a parser of HTML, not our printer, says what the nesting is. */
function elements(markup: string): { element: Element; parent: string }[] {
  const walk = (element: Element, parent: string): { element: Element; parent: string }[] => [
    ...(element.tagName === undefined ? [] : [{ element, parent }]),
    ...(element.children ?? []).flatMap((child) => walk(child, element.tagName ?? '')),
  ];
  return walk(unified().use(rehypeParse, { fragment: true }).parse(markup) as Element, '');
}

describe.each(figureDefinitions.map((definition) => [definition.id, definition] as const))(
  'the explanation of %s',
  (_, definition) => {
    it('says everything in whole sentences', () => {
      for (const text of [definition.explanation, definition.moves]) expect(text).toMatch(/^[A-Z].{20,}\.$/s);
      for (const text of [definition.name, definition.source, definition.range])
        expect(text).toMatch(/^\S.*[^.\s]$/);
      expect(definition.formula.length).toBeGreaterThan(0);
      expect(definition.formula.map(({ lead }) => lead)[0]).toBe('');
    });

    it('has formulas in well-formed MathML', () => {
      for (const { formula } of definition.formula) {
        const markup = toMathML(formula);
        const found = elements(markup);
        expect(found[0]?.element.tagName).toBe('math');
        expect(found.slice(1).every(({ parent }) => parent !== '')).toBe(true);
        // Nothing was closed for us: as many tags open as close.
        expect(markup.match(/<[a-z]+[^/>]*>/g)?.length).toBe(markup.match(/<\/[a-z]+>/g)?.length);
        for (const { element } of found) {
          const { tagName = '', children = [] } = element;
          const inside = children.filter(({ type }) => type === 'element').length;
          if (leaves.includes(tagName)) expect(inside).toBe(0);
          else expect(children.every(({ type }) => type === 'element')).toBe(true);
          if (arity[tagName] !== undefined) expect(inside).toBe(arity[tagName]);
        }
      }
    });

    it('explains its letters, each once', () => {
      const shown = symbolsOfLines(definition.formula).map(
        ({ letter, subscript }) => `${letter} ${subscript}`,
      );
      expect(new Set(shown).size).toBe(shown.length);
    });
  },
);

describe('the letters', () => {
  it('mean one thing each', () => {
    const all = Object.values(letters).map(({ letter, subscript }) => `${letter}_${subscript}`);
    expect(all.filter((one, index) => all.indexOf(one) !== index)).toEqual([]);
  });
});

describe('formulas in plain text', () => {
  // As textbooks write them.
  it.each([
    ['mean-chord', 'S/b'],
    ['aspect-ratio', 'b²/S'],
    ['wing-loading', 'm·g/S'],
    ['tail-volume', 'S_t·l_t/(S·MAC)'],
    ['fin-volume', 'S_f·l_f/(S·b)'],
    ['lifting-area', 'S + S_t'],
    ['energy-height', 'E/(m·g)'],
    ['wound-share', 'x = N/N_b'],
    ['break-turns', 'the mean of the tests, else C·L/√A'],
    ['reynolds-number', 'Re = ρ·V·MAC/μ (at the gliding speed)'],
    ['mean-aerodynamic-chord', '(∫c² dy)/(∫c dy) (over the half span), else S/b (without panels)'],
  ])('%s: %s', (id, text) => {
    expect(linesText(figureDefinition(id)!.formula)).toBe(text);
  });
});
