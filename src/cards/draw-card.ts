import satori from 'satori';
import sharp from 'sharp';
import { markPicture } from '../components/mark-picture.ts';
import type { Card, Said } from './card.ts';
import type { CardFont } from './card-fonts.ts';
import { cardLayout, pictureSource } from './card-layout.ts';
import { cardSize } from './card-picture.ts';

/**
 * A card as an SVG in which letters are outlines: no typeface is needed to show it. A text with a letter that the
 * typefaces lack is said plainly, and so are all texts where one of them cannot be set.
 */
export async function cardSvg(card: Card, fonts: readonly CardFont[]): Promise<string> {
  const missing = new Set<string>();
  try {
    const svg = await layOut(card, fonts, missing);
    if (missing.size === 0) return svg;
    return await layOut(
      plainWhere(card, (text) => [...text].some((letter) => missing.has(letter))),
      fonts,
      new Set(),
    );
  } catch {
    return layOut(
      plainWhere(card, () => true),
      fonts,
      new Set(),
    );
  }
}

/** A card as a PNG. */
export async function cardPng(svg: string): Promise<Buffer> {
  return sharp(Buffer.from(svg)).png({ compressionLevel: 9, palette: true, effort: 7 }).toBuffer();
}

function layOut(card: Card, fonts: readonly CardFont[], missing: Set<string>): Promise<string> {
  return satori(cardLayout(card, pictureSource(markPicture(0))) as Parameters<typeof satori>[0], {
    ...cardSize,
    fonts: [...fonts],
    loadAdditionalAsset: async (_, letters) => {
      for (const letter of letters) missing.add(letter);
      return [];
    },
  });
}

/** The card with the plain text instead of every one that cannot be set. */
function plainWhere(card: Card, cannotBeSet: (text: string) => boolean): Card {
  const drawable = (said: Said): Said => (cannotBeSet(said.text) ? { ...said, text: said.plain } : said);
  const { site, title, target, rows, plan } = card;
  return {
    ...card,
    site: drawable(site),
    title: drawable(title),
    target: target === null ? null : drawable(target),
    rows: rows.map((row) => ({
      ...row,
      aircraft: drawable(row.aircraft),
      builders: row.builders.map(drawable),
    })),
    plan: plan === null ? null : { ...plan, name: drawable(plan.name) },
  };
}
