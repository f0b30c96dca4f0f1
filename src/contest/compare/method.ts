import { type Family, unknownChoice } from './family.ts';

/** How flights become a score. Rounds need their list in the rules, so they cannot be tried without it. */
export const method: Family = {
  option: 'method',
  usual: ({ rounds }) => [
    'best',
    ...[2, 3, 5].flatMap((flights) => [`sum:${flights}`, `mean:${flights}`]),
    ...(rounds.length > 0 ? ['rounds'] : []),
  ],
  change: (challenge, _, choice) => {
    const { scoring, rounds } = challenge;
    if (choice === 'rounds' && rounds.length === 0)
      return { fault: 'Rounds cannot be tried: the rules name none, and so no flight is of one.' };
    if (choice === 'best' || choice === 'rounds')
      return choice === scoring.method ? null : { ...challenge, scoring: { ...scoring, method: choice } };
    const [, way, taken] = /^(sum|mean):([1-9]\d?)$/.exec(choice) ?? [];
    if (way !== 'sum' && way !== 'mean')
      return unknownChoice(
        'method',
        choice,
        '"best", "rounds", and "sum:3" or "mean:3" with a number from 1 to 99',
      );
    const flights = Number(taken);
    if (way === scoring.method && flights === scoring.flights) return null;
    return { ...challenge, scoring: { ...scoring, method: way, flights } };
  },
};
