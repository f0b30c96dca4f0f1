import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** A typeface of the site: one for text and figures, one for names. */
type Typeface = 'Text' | 'Display';

/** One file of a typeface, as the drawing library takes it. */
export interface CardFont {
  readonly name: string;
  readonly weight: 400 | 600;
  readonly style: 'normal';
  readonly data: Buffer;
}

const alphabets = ['latin', 'latin-ext', 'greek', 'cyrillic', 'vietnamese'] as const;

/** All alphabets of a typeface as a list of families: each file is one to the drawing library. */
export function familyOf(typeface: Typeface): string {
  return alphabets.map((alphabet) => `${typeface} ${alphabet}`).join(', ');
}

/** Reads the site's typefaces in the cuts and the file format that the drawing library takes. */
export async function readCardFonts(): Promise<CardFont[]> {
  const { resolve } = createRequire(import.meta.url);
  const cuts = [
    ['Text', 'source-sans-3', 400],
    ['Text', 'source-sans-3', 600],
    ['Display', 'brygada-1918', 400],
    ['Display', 'brygada-1918', 600],
  ] as const;
  return Promise.all(
    cuts.flatMap(([typeface, family, weight]) =>
      alphabets.map(async (alphabet) => ({
        name: `${typeface} ${alphabet}`,
        weight,
        style: 'normal' as const,
        data: await readFile(
          resolve(`@fontsource/${family}/files/${family}-${alphabet}-${weight}-normal.woff`),
        ),
      })),
    ),
  );
}
