export const card = {
  /** What the picture of a challenge says, for those who do not see it. */
  alt: (title: string, state: string, places: readonly string[]) =>
    places.length === 0 ? `${title}. ${state}` : `${title}. ${state} In front: ${places.join('; ')}.`,
  place: (place: number, aircraft: string, score: string) => `${place}, ${aircraft}, ${score}`,
  seenFromAbove: (aircraft: string) => `${aircraft}, from above`,
} as const;
