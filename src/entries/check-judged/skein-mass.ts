import { isPresent } from '../../figures/figure.ts';
import { formatQuantity } from '../../quantities/format-quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import { pathOfSetup } from '../source/path-of-setup.ts';
import type { CrossCheck } from './cross-check.ts';

/** What measuring strip with a rule and a gauge explains; common practice, no source. */
const least = 0.8;
const most = 1.25;

/** A skein weighs about what its strip, strands and length give, in every setup that has motors of its own. */
export const checkSkeinMass: CrossCheck = ({ record, source }) =>
  record.entry.setups.flatMap((setup, place) =>
    place > 0 && !setup.overrides.some((path) => path.split('.')[0] === 'motors')
      ? []
      : setup.design.motors.flatMap(({ skein }, motor) => {
          const check = record.setupFigures[place]?.motors[motor]?.get('skein-mass-check');
          const mass = skein?.mass;
          if (mass == null || !isPresent(check) || (check.value >= least && check.value <= most)) return [];
          const path = [...pathOfSetup(source, setup.id), 'motors', motor, 'skein', 'mass'];
          const geometric = formatQuantity(Number((mass.value / check.value).toPrecision(3)), 'mass', 'g');
          return [
            problemAt(source, path, 'value', 'skein-mass-differs', {
              message: `${fieldName(source, path)} is "${mass.written}", but strip, strands and length give ${geometric}: measuring explains ${least} to ${most} times that, but not ${Number(check.value.toPrecision(3))}. Weigh it again, or correct the strip, the strands or the length.`,
              found: mass.written,
            }),
          ];
        }),
  );
