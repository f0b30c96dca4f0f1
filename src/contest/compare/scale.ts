import { isPresent } from '../../figures/figure.ts';
import type { Contender } from '../contender.ts';
import { figureValues } from '../rules/figure-values.ts';
import { type Family, unknownChoice } from './family.ts';

const figures = ['span', 'flying-mass', 'rubber-mass', 'wing-area'];
const powers = ['-1', '-0.5', '0.5', '1'];

/**
 * A handicap by a figure of the model. The reference is the figure's median among the entries, unless the rules have
 * one: it moves every score by the same factor and so no place.
 */
export const scale: Family = {
  option: 'scale',
  usual: ({ scoring }) =>
    scoring.method === 'rounds'
      ? []
      : ['none', ...figures.flatMap((figure) => powers.map((power) => `${figure}:${power}`))],
  change: (challenge, contenders, choice) => {
    const { scoring } = challenge;
    if (scoring.method === 'rounds')
      return { fault: 'A handicap cannot be tried: a score by rounds takes none.' };
    if (choice === 'none')
      return scoring.scale === null ? null : { ...challenge, scoring: { ...scoring, scale: null } };
    const [, by = '', written] = /^([a-z-]+):([+-]?\d+(?:\.\d+)?)$/.exec(choice) ?? [];
    const power = Number(written ?? Number.NaN);
    if (by === '' || !Number.isFinite(power) || power === 0)
      return unknownChoice(
        'scale',
        choice,
        '"none" and a figure with a power other than 0, such as "span:-0.5"',
      );
    if (by === scoring.scale?.by && power === scoring.scale.power) return null;
    const reference = scoring.scale?.by === by ? scoring.scale.reference : median(contenders, by);
    if (reference === null)
      return { fault: `--scale cannot use "${by}": no entry has such a figure of the model above zero.` };
    return { ...challenge, scoring: { ...scoring, scale: { by, reference, power } } };
  },
};

/** The lower median of a figure of the entries, in their latest setup; null where none has it. */
function median(contenders: readonly Contender[], figure: string): number | null {
  const values = contenders
    .flatMap(({ entry, modelFigures }) =>
      figureValues(modelFigures(entry.setups.at(-1)?.id ?? null), figure)
        .filter(isPresent)
        .map(({ value }) => value),
    )
    .filter((value) => value > 0)
    .sort((a, b) => a - b);
  return values[Math.ceil(values.length / 2) - 1] ?? null;
}
