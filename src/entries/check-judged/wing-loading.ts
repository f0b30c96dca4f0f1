import { isPresent } from '../../figures/figure.ts';
import { gravity } from '../../flight/gravity.ts';
import { toUnit } from '../../quantities/format.ts';
import { otherUnit } from '../check/other-unit.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { CrossCheck } from './cross-check.ts';
import { pathInForce, touches } from './written-in-setup.ts';

/** Indoor models of paper and film are the lightest, flying scale the heaviest; common practice, no source. N/m². */
const lightest = 0.03;
const heaviest = 60;

/** Mass and wing fit each other, in every setup that changed one of them. What an official measured is left alone. */
export const checkWingLoading: CrossCheck = ({ record, source }) =>
  record.entry.setups.flatMap((setup, place): Problem[] => {
    const figures = record.setupFigures[place]?.entry;
    const [loading, flying, area] = ['wing-loading', 'flying-mass', 'wing-area'].map((id) =>
      figures?.get(id),
    );
    const { mass, inspected } = setup.design;
    const key = mass.airframe === null ? 'flying' : 'airframe';
    const stated = mass[key];
    if (!touches(setup, place, ['mass', 'wing']) || inspected !== null || stated === null) return [];
    if (!isPresent(loading) || !isPresent(flying) || !isPresent(area) || isPlausible(loading.value))
      return [];
    const rubber = flying.value - stated.value;
    const meant = otherUnit(stated, (other) => isPlausible(((other + rubber) * gravity) / area.value));
    const path = pathInForce(source, record.entry.setups, place, `mass.${key}`);
    const inDecimetres = `${rounded(toUnit(area.value, 'area', 'dm2'))} dm²`;
    const inGrams = (value: number) => `${rounded(toUnit(value, 'loading', 'g/dm2'))} g/dm²`;
    return [
      problemAt(source, path, 'value', 'wing-loading-improbable', {
        message: `${fieldName(source, path)} is "${stated.written}" on a wing of ${inDecimetres}, a wing loading of ${inGrams(loading.value)}, which is improbable: models on rubber carry from ${inGrams(lightest)} to ${inGrams(heaviest)}.${meant === null ? ' Correct the mass or the wing.' : ` Did you mean "${meant}"?`}`,
        found: stated.written,
        suggestion: meant,
      }),
    ];
  });

function isPlausible(loading: number): boolean {
  return loading >= lightest && loading <= heaviest;
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}
