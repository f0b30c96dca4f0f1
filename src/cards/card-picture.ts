import { createHash } from 'node:crypto';
import { words } from '../words.ts';
import type { Card } from './card.ts';

/** Size of a card in pixels: what the readers of shared addresses ask for. Common practice, no source. */
export const cardSize = { width: 1200, height: 630 } as const;

/** A picture that stands for a page where its address is shared. */
export interface SharedPicture {
  /** Site path. */
  readonly path: string;
  readonly type: string;
  readonly width: number;
  readonly height: number;
  readonly alt: string;
}

/**
 * Where the picture of a card is published. Its name comes from what it shows: whoever keeps a copy asks again when the
 * board has changed.
 */
export function cardPicture(card: Card): SharedPicture {
  const { title, state, rows } = card;
  const places = rows.map((row) => words.card.place(row.place, row.aircraft.text, row.score));
  return {
    path: `/assets/cards/${card.challenge}-${cardHash(card)}.png`,
    type: 'image/png',
    ...cardSize,
    alt: words.card.alt(title.text, state, places),
  };
}

/** First 16 hexadecimal digits of the SHA-256 of what a card shows. */
export function cardHash(card: Card): string {
  return createHash('sha256').update(JSON.stringify(card)).digest('hex').slice(0, 16);
}
