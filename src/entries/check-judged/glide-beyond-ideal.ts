import { isPresent } from '../../figures/figure.ts';
import { setupInForce } from '../../figures/setup-in-force.ts';
import { bestGlide } from '../../flight/polar.ts';
import { dryAirDensity, standardAtmosphere } from '../../flight/standard-atmosphere.ts';
import { airViscosity } from '../../flight/viscosity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { CrossCheck } from './cross-check.ts';
import type { EntryWithFigures } from './with-figures.ts';

/** No test glide is flatter than that of a smooth plate with an ideal tip, in still air. */
export const checkGlides: CrossCheck = ({ record, source }) =>
  record.entry.glides.flatMap(({ date, distance, height }, index): Problem[] => {
    if (distance === null || height === null || height.value <= 0) return [];
    const place = date === null ? 0 : setupInForce(record.entry.setups, date);
    const ideal = idealGlideRatio(record, place);
    const ratio = distance.value / height.value;
    const u = ratio * Math.hypot(distance.u / distance.value, height.u / height.value);
    if (ideal === null || ratio <= ideal + 2 * u) return [];
    const path = ['glides', index, 'distance'];
    return [
      problemAt(source, path, 'value', 'glide-beyond-ideal', {
        message: `${fieldName(source, path)} is "${distance.written}" from a height of "${height.written}", a glide ratio of ${rounded(ratio)}; an ideal wing of these measures has ${rounded(ideal)}. It needs rising air or a wind from behind, or another look at the numbers.`,
        found: distance.written,
      }),
    ];
  });

/** The flattest glide of the ceiling's wing: no more drag than a smooth plate, an ideal tip, C_L up to 1.5; at sea level. */
function idealGlideRatio({ setupFigures }: EntryWithFigures, place: number): number | null {
  const figures = setupFigures[place]?.entry;
  const [mass, wingArea, chord, aspectRatio] = [
    'flying-mass',
    'wing-area',
    'mean-aerodynamic-chord',
    'aspect-ratio',
  ].map((id) => figures?.get(id));
  const air = standardAtmosphere(0);
  if (!isPresent(mass) || !isPresent(wingArea) || !isPresent(chord) || !isPresent(aspectRatio)) return null;
  if (air === null) return null;
  const { lift, drag } = bestGlide({
    mass: mass.value,
    wingArea: wingArea.value,
    chord: chord.value,
    aspectRatio: aspectRatio.value,
    density: dryAirDensity(air),
    viscosity: airViscosity(air.temperature),
    plateFactor: 1,
    fixedDrag: 0,
    spanEfficiency: 1,
    usableLift: 1.5,
  });
  return lift / drag;
}

function rounded(value: number): number {
  return Number(value.toPrecision(3));
}
