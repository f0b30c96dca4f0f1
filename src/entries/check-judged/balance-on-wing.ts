import { isPresent } from '../../figures/figure.ts';
import { toUnit } from '../../quantities/format.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { CrossCheck } from './cross-check.ts';
import { pathInForce, touches } from './written-in-setup.ts';

/** A model balances over its wing, one with the tailplane behind it ahead of the neutral point. */
export const checkBalance: CrossCheck = ({ record, source }) =>
  record.entry.setups.flatMap((setup, place): Problem[] => {
    const { balance, layout, inspected } = setup.design;
    if (!touches(setup, place, ['balance', 'wing', 'tailplane', 'layout'])) return [];
    if (balance === null || inspected?.balance != null) return [];
    const figures = record.setupFigures[place]?.entry;
    const [point, chord, margin, neutral] = [
      'balance-point',
      'mean-aerodynamic-chord',
      'static-margin',
      'neutral-point',
    ].map((id) => figures?.get(id));
    if (!isPresent(point)) return [];
    const path = pathInForce(source, record.entry.setups, place, 'balance');
    const ofChord = isPresent(chord) ? ` of ${lengthInWords(chord.value)}` : '';
    const said = `${fieldName(source, path)} is "${balance.written}", ${inPercent(point.value)} of the mean aerodynamic chord${ofChord}`;
    if (isBesideWing(point.value, layout))
      return [
        problemAt(source, path, 'value', 'balance-beside-wing', {
          message: `${said}, ${point.value > 1 ? 'behind the wing' : 'ahead of the wing'}. Measure from the leading edge at the centre line, and look at the unit.`,
          found: balance.written,
        }),
      ];
    if (!isPresent(margin) || !isPresent(neutral) || margin.value + 2 * margin.u >= 0) return [];
    return [
      problemAt(source, path, 'value', 'balance-behind-neutral-point', {
        message: `${said}, behind the neutral point, which the wing and the tailplane put at ${inPercent(neutral.value)}: a well-trimmed model balances ahead of it. Look at the balance and at the tailplane's area and arm again.`,
        found: balance.written,
      }),
    ];
  });

/** With a large tailplane models balance up to the trailing edge; a canard balances ahead of its wing, a tandem between two. */
function isBesideWing(point: number, layout: string): boolean {
  if (layout === 'tandem') return false;
  return point > 1 || (point < 0 && layout !== 'canard');
}

function inPercent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

function lengthInWords(length: number): string {
  return `${Number(toUnit(length, 'length', 'mm').toPrecision(3))} mm`;
}
