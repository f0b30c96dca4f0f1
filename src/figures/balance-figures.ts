import { downwashSlope, liftSlope, neutralPoint, tailEffect } from '../airframe/stability.ts';
import { readBalanceLength, readBalanceShare } from './balance-readings.ts';
import type { FigureDefinition } from './definition.ts';

/** Figures of where the model balances and what that means. */
export const balanceFigures: readonly FigureDefinition[] = [
  {
    id: 'balance-point',
    name: 'Balance point',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'Where the model balances, as a share of the mean aerodynamic chord behind that chord’s leading edge. So balances of wings of any shape can be compared.',
    formula: '(x_cg − x of the leading edge of MAC) / MAC',
    source: 'standard definition',
    range: 'any wing',
    compute: (from, { design }) => readBalanceShare(from, design),
  },
  {
    id: 'neutral-point',
    name: 'Neutral point',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'The balance at which the model would no longer find back to its speed by itself, as a share of the mean aerodynamic chord. A larger tail on a longer arm moves it back.',
    formula:
      '0.25 + V·κ/(1 + κ·S_t/S), κ = (a_t/a_w)(1 − dε/dα), a = 2π·AR/(2 + √(AR² + 4)), dε/dα = 2a_w/(π·AR)',
    source:
      'Anderson, Introduction to Flight, chapter 7; lift slopes by Helmbold 1942; the divisor because the arm runs from quarter-chord to quarter-chord',
    range:
      'tailplane behind the wing, attached flow; fuselage and propeller are left out, so it is an estimate',
    compute: (from, { design }) => {
      if (design.layout !== 'tail-aft')
        return from.absent('is worked out only for models with the tailplane behind the wing');
      const volume = from.figure('tail-volume');
      const tailArea = from.figure('tail-area');
      const tailSpan = from.need(design.tailplane?.span, "the tailplane's span");
      const aspectRatio = from.figure('aspect-ratio');
      const slope = liftSlope(aspectRatio);
      const effect = tailEffect(
        liftSlope((tailSpan * tailSpan) / tailArea),
        slope,
        downwashSlope(slope, aspectRatio),
      );
      return neutralPoint(volume, effect, tailArea / from.figure('wing-area'));
    },
  },
  {
    id: 'static-margin',
    name: 'Static margin',
    unit: '1',
    kind: 'share',
    of: 'model',
    scope: 'entry',
    explanation:
      'How far the balance lies ahead of the neutral point, in mean aerodynamic chords. More makes the model return to its speed more firmly; below zero it does not.',
    formula: 'neutral point − balance point',
    source: 'Anderson, Introduction to Flight, chapter 7',
    range: 'as the neutral point; no certificate of airworthiness',
    compute: (from) => from.figure('neutral-point') - from.figure('balance-point'),
  },
  {
    id: 'trim-ballast',
    name: 'Trim ballast',
    unit: 'kg/m',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much weight in the nose moves the balance forward, for small shifts: the flying mass over the distance from the balance to the nose.',
    formula: 'm/(x_cg + nose); a shift Δx needs exactly m·Δx/(x_cg + nose − Δx)',
    source: 'law of the lever',
    range: 'shifts that are small against the distance to the nose',
    compute: (from, { design }) => {
      const nose = from.need(design.nose, "the nose's length");
      return from.figure('flying-mass') / (readBalanceLength(from, design) + nose);
    },
  },
];
