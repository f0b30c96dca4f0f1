import type { Challenge } from '../../model/challenge.ts';
import { parseQuantity } from '../../quantities/parse.ts';
import type { Contender } from '../contender.ts';
import { type Family, unknownChoice } from './family.ts';

/** Caps are tried in whole steps of this many seconds, as organisers set them. */
const step = 10;

/** The cap of a flight. With rounds each round has its own; a choice such as `x0.5` is a share of them all. */
export const maximum: Family = {
  option: 'maximum',
  usual: (challenge, contenders) =>
    challenge.scoring.method === 'rounds'
      ? ['x0.5', 'x0.75', 'x1.5', 'x2']
      : usualCaps(challenge, contenders),
  change: (challenge, _, choice) => {
    const share = /^x(\d+(?:\.\d+)?)$/.exec(choice)?.[1];
    return challenge.scoring.method === 'rounds'
      ? ofRounds(challenge, choice, Number(share ?? Number.NaN))
      : ofFlight(challenge, choice);
  },
};

/** No cap, the target, its double, and the times that half and nine tenths of the entries do not exceed. */
function usualCaps({ target }: Challenge, contenders: readonly Contender[]): readonly string[] {
  const longest = contenders
    .flatMap(({ entry }) => {
      const times = entry.flights.flatMap(({ watches }) => watches.map(({ value }) => value));
      return times.length === 0 ? [] : [Math.max(...times)];
    })
    .sort((a, b) => a - b);
  const reached = [0.5, 0.9].flatMap((share) => longest[Math.ceil(share * longest.length) - 1] ?? []);
  const caps = [
    ...(target === null ? [] : [target.time, 2 * target.time]),
    ...reached.map((time) => Math.max(step, Math.round(time / step) * step)),
  ];
  return ['none', ...[...new Set(caps)].sort((a, b) => a - b).map((cap) => `${cap} s`)];
}

function ofFlight(challenge: Challenge, choice: string) {
  const { flying } = challenge;
  if (choice === 'none')
    return flying.maximum === null ? null : { ...challenge, flying: { ...flying, maximum: null } };
  const cap = parseQuantity(choice, 'time');
  if (!cap.ok || cap.value.value <= 0)
    return unknownChoice('maximum', choice, '"none" and times such as "120 s"');
  if (cap.value.value === flying.maximum) return null;
  return { ...challenge, flying: { ...flying, maximum: cap.value.value } };
}

function ofRounds(challenge: Challenge, choice: string, share: number) {
  if (!(share > 0))
    return unknownChoice('maximum', choice, 'a share of the maximum of every round, such as "x0.5"');
  if (share === 1) return null;
  const rounds = challenge.rounds.map((round) => ({ ...round, maximum: round.maximum * share }));
  return { ...challenge, rounds };
}
