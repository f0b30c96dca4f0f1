import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accentStyle, contrast, parseColour } from '../../src/components/accent.ts';

describe('contrast', () => {
  // WCAG 2.2, definition of contrast ratio: black on white is 21 to 1, a colour on itself 1 to 1.
  it('is 21 for black on white and 1 for a colour on itself', () => {
    expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 10);
    expect(contrast([120, 30, 9], [120, 30, 9])).toBe(1);
  });

  // WebAIM, "Contrast and Color Accessibility" (from memory): #767676 on white just passes 4.5, #777777 just fails.
  it('passes #767676 on white and fails #777777', () => {
    expect(contrast([0x76, 0x76, 0x76], [255, 255, 255])).toBeCloseTo(4.54, 2);
    expect(contrast([0x77, 0x77, 0x77], [255, 255, 255])).toBeCloseTo(4.48, 2);
  });
});

describe('parseColour', () => {
  it('reads three and six digits', () => {
    expect(parseColour('#8a3b12')).toEqual([138, 59, 18]);
    expect(parseColour('#F0c')).toEqual([255, 0, 204]);
  });

  it.each(['', 'red', '#12345', '#12345g', 'url(x)', '#fff;}body{display:none'])('refuses %j', (text) => {
    expect(parseColour(text)).toBeNull();
  });
});

describe('accentStyle', () => {
  const colours = (style: string): string[] => style.match(/--club:#[0-9a-f]{6}/g) ?? [];

  it('keeps a colour that can be read on paper', () => {
    expect(accentStyle('#234a7a')).toContain(':root{--club:#234a7a}');
  });

  it('gives every colour 4.5 to 1 on paper and in the dark (WCAG 2.2, 1.4.3)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (number) => {
        const shown = colours(accentStyle(`#${number.toString(16).padStart(6, '0')}`));
        const [light, dark] = shown.map((text) => parseColour(text.slice('--club:'.length)));
        expect(contrast(light!, [0xfb, 0xfa, 0xf5])).toBeGreaterThanOrEqual(4.5);
        expect(contrast(dark!, [0x17, 0x16, 0x13])).toBeGreaterThanOrEqual(4.5);
      }),
      { seed: 2031, numRuns: 300 },
    );
  });

  it('never lets a text that is no colour into the style sheet', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(accentStyle(text)).toMatch(/^[-:@(){}#a-z0-9 \n]+$/);
      }),
      { seed: 2031, numRuns: 300 },
    );
  });
});
