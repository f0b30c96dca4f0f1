/** A kind of sheet: how wide, how tall at most, and what it leaves free around the aircraft; units of the paper. */
export interface Paper {
  readonly name: 'wide' | 'narrow';
  readonly width: number;
  readonly tallest: number;
  readonly sides: number;
  readonly top: number;
  readonly bottom: number;
  /** Between the views from above and from behind. */
  readonly gap: number;
  /** Size of the letters. */
  readonly letter: number;
}

/** For a column of at least 464 px, in which its letters stand at nine, and for print. */
export const wide: Paper = {
  name: 'wide',
  width: 720,
  tallest: 640,
  sides: 44,
  top: 50,
  bottom: 56,
  gap: 40,
  letter: 14,
};

/** For a column of 256 px, in which letters of 12 still stand at more than nine. */
export const narrow: Paper = {
  name: 'narrow',
  width: 320,
  tallest: 440,
  sides: 10,
  top: 38,
  bottom: 48,
  gap: 32,
  letter: 12,
};
