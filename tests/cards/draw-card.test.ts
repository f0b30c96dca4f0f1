import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Card, Said } from '../../src/cards/card.ts';
import { readCardFonts } from '../../src/cards/card-fonts.ts';
import { cardPng, cardSvg } from '../../src/cards/draw-card.ts';

const fonts = await readCardFonts();
const said = (text: string, plain = 'plain'): Said => ({ text, plain });

function cardWith(name: string, changes: Partial<Card> = {}): Card {
  return {
    challenge: 'spring',
    site: said('Hollow Marsh Trials'),
    title: said(name),
    state: 'Open until the end of 30 September 2031, UTC.',
    target: null,
    rows: [
      { place: 1, aircraft: said(name), builders: [said(name)], score: '41.7 s', note: null },
      {
        place: 2,
        aircraft: said('Reedling'),
        builders: [said('M. Thorn')],
        score: '38.2 s',
        note: null,
      },
      {
        place: 3,
        aircraft: said('Reedling'),
        builders: [said('M. Thorn')],
        score: '38.2 s',
        note: null,
      },
    ],
    nobody: null,
    plan: null,
    accent: '#234a7a',
    ...changes,
  };
}

const draw = (card: Card) => cardSvg(card, fonts);

describe('a drawn card', () => {
  it('is a PNG of 1200 by 630', async () => {
    const png = await cardPng(await draw(cardWith('Reedling')));
    // PNG, third edition, 5.2 and 11.2.1: signature; width and height are the first two numbers of IHDR.
    expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([1200, 630]);
  });

  it('has the same bytes each time', async () => {
    const [one, two] = [await draw(cardWith('Reedling')), await draw(cardWith('Reedling'))];
    expect(two).toBe(one);
    expect((await cardPng(two)).equals(await cardPng(one))).toBe(true);
  });

  it.each(['Šárka', 'Ωmega', 'Журавль', 'Nguyễn', 'Søren'])('draws %s as it is written', async (name) => {
    expect(await draw(cardWith(name))).not.toBe(await draw(cardWith('plain')));
  });

  it.each(['שלום עולם', 'العربية', '日本語の模型', '🦆 Duck', 'क्षि', 'lone \ud800', 'Тёплый 風'])(
    'says %s plainly, for its letters are not there',
    async (name) => {
      expect(await draw(cardWith(name))).toBe(await draw(cardWith('plain')));
    },
  );

  it.each([
    ['one long word', 'x'.repeat(300)],
    ['many words', 'A very long name of an aircraft '.repeat(12)],
  ])('keeps %s out of its margins', async (_, name) => {
    const plan = { svg: '<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>', name: said(name) };
    const png = await cardPng(await draw(cardWith(name, { site: said(name), target: said(name), plan })));
    for (const left of [0, 1160]) {
      const margin = await sharp(png).extract({ left, top: 0, width: 40, height: 630 }).png().toBuffer();
      expect((await sharp(margin).stats()).channels.map(({ min, max }) => max - min)).toEqual([0, 0, 0]);
    }
    const foot = await sharp(png).extract({ left: 0, top: 600, width: 1200, height: 30 }).png().toBuffer();
    expect((await sharp(foot).stats()).channels.map(({ min, max }) => max - min)).toEqual([0, 0, 0]);
  });

  it('is drawn whatever people write', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 30 }), async (name) => {
        expect(await draw(cardWith(name))).toMatch(/^<svg [\s\S]*<\/svg>$/);
      }),
      { numRuns: 20, seed: 7 },
    );
  });
});
