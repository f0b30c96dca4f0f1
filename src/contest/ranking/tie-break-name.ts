import type { Challenge, Round } from '../../model/challenge.ts';
import { nameOfFigure } from '../rules/name-of-figure.ts';

const plain: Readonly<Record<string, string>> = {
  'next-best-flight': 'next-best flight',
  'earlier flight': 'the earlier flight',
  provisional: 'acceptance before a provisional time',
};

/** The name of a step that parted equal scores, inside a sentence. */
export function tieBreakName({ rounds }: Pick<Challenge, 'rounds'>, step: string): string {
  const known = plain[step];
  if (known !== undefined) return known;
  const round = rounds.find(({ id }) => id === step);
  if (round !== undefined) return roundName(round);
  const [, prefers, figure] = /^(larger|smaller) (.+)$/.exec(step) ?? [];
  return figure === undefined ? step : `${prefers} ${nameOfFigure(figure)}`;
}

/** A round as its rules call it, told to be a fly-off where its own name does not. */
export function roundName({ id, flyOff }: Round): string {
  return flyOff && !id.startsWith('fly') ? `fly-off ${id}` : id;
}
