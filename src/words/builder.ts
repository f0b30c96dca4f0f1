import { counted } from './texts.ts';

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
  best: 'Best accepted time',
  accepted: 'Flights accepted',
  noTime: 'none yet',
  personalBest: 'Personal best',
  with: (aircraft: string, challenge: string) => `with ${aircraft}, ${challenge}`,
  summary: (accepted: number, challenges: number) =>
    `${counted(accepted, 'accepted flight')} in ${counted(challenges, 'challenge')}.`,
  noneAccepted: 'No flight has been accepted yet.',
  placeOf: (place: number, score: string) => `place ${place}, ${score}`,
} as const;
