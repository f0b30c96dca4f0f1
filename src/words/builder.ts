export const builder = {
  all: 'Everyone who has entered an aircraft.',
  one: 'aircraft',
  many: 'aircraft',
  club: 'Club',
  aircraft: 'Aircraft',
  none: 'No aircraft yet.',
  junior: 'A junior: shown by handle only.',
  link: 'Own page',
  challenge: 'Challenge',
  result: 'Result',
  placeOf: (place: number, score: string) => `place ${place}, ${score}`,
} as const;
