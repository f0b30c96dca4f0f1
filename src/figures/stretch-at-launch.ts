import { stretchAtShare } from '../rubber/stretch-energy.ts';
import { type DerivedNumbers, evaluateTogether } from './derived-numbers.ts';
import type { Figure } from './figure.ts';
import { batchOf } from './skein-readings.ts';
import { readBreakStretch } from './stretch-model.ts';
import { numberedMotors, type Subject } from './subject.ts';

/**
 * How far the strands of each kind of motor are stretched at launch, as stretched over slack length: λ(x) of the share
 * wound. It says where on the stretch curve of its batch a skein works. Absent with its reason where that is not known.
 */
export function stretchesAtLaunch(subject: Subject): readonly Figure[] {
  return evaluateTogether(subject, stretchNumbers(subject));
}

/** What the stretches are worked out of, to be evaluated along with other numbers. */
export function stretchNumbers(subject: Subject): DerivedNumbers<readonly Figure[]> {
  return {
    numbers: numberedMotors(subject.design).map((motor) => ({
      id: 'stretch-at-launch',
      unit: '1',
      compute: (from) => {
        const batch = batchOf(subject, motor);
        const share = from.motorFigure('wound-share', motor.index);
        return stretchAtShare(
          share,
          batch === null ? from.assume('break-stretch') : readBreakStretch(from, batch),
        );
      },
    })),
    from: (figures) => figures,
  };
}
