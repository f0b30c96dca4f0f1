import { type Family, unknownChoice } from './family.ts';

/** Whether flights that wait for a ruling have places. */
export const provisional: Family = {
  option: 'provisional',
  usual: () => ['apart', 'ranked'],
  change: (challenge, _, choice) => {
    if (choice !== 'apart' && choice !== 'ranked')
      return unknownChoice('provisional', choice, '"apart" and "ranked"');
    const { scoring } = challenge;
    return choice === scoring.provisional
      ? null
      : { ...challenge, scoring: { ...scoring, provisional: choice } };
  },
};
