import type { FigureDefinition } from './definition.ts';

const noTailplane = 'a tailless model has no tailplane';

/** Figures of the tail's size and setting. */
export const tailFigures: readonly FigureDefinition[] = [
  {
    id: 'tail-area',
    name: 'Tailplane area',
    unit: 'm2',
    of: 'model',
    scope: 'entry',
    explanation: 'The area of the tailplane seen from above (of the foreplane, where the tail goes first).',
    formula: 'S_t, as measured',
    source: 'measured',
    range: 'models with a tailplane',
    compute: (from, { design }) => {
      if (design.layout === 'tailless') return from.absent(noTailplane);
      return from.need(design.tailplane?.area, "the tailplane's area");
    },
  },
  {
    id: 'lifting-area',
    name: 'Lifting area',
    unit: 'm2',
    of: 'model',
    scope: 'entry',
    explanation:
      'Wing and tailplane together, seen from above: what many classes limit. Of a tailless model it is the wing alone.',
    formula: 'S + S_t',
    source: 'definition of model classes',
    range: 'any layout',
    compute: (from, { design }) => {
      const wing = from.figure('wing-area');
      return design.layout === 'tailless' ? wing : wing + from.figure('tail-area');
    },
  },
  {
    id: 'tail-volume',
    name: 'Tail volume',
    unit: '1',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much the tailplane has to say against the wing: its area times its arm, in measures of the wing’s area and chord. A larger one lets the balance lie further back.',
    formula: 'S_t·l_t / (S·MAC)',
    source: 'standard definition',
    range: 'models with a tailplane; the arm runs from quarter-chord to quarter-chord',
    compute: (from, { design }) => {
      const area = from.figure('tail-area');
      const arm = from.need(design.tailplane?.arm, "the tailplane's arm");
      return (area * arm) / (from.figure('wing-area') * from.figure('mean-aerodynamic-chord'));
    },
  },
  {
    id: 'fin-volume',
    name: 'Fin volume',
    unit: '1',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much the fin has to say in yaw: the area of all fins times their arm, in measures of the wing’s area and span.',
    formula: 'S_f·l_f / (S·b)',
    source: 'standard definition',
    range: 'models with a fin',
    compute: (from, { design }) => {
      const area = from.need(design.fin?.area, "the fin's area");
      const arm = from.need(design.fin?.arm, "the fin's arm");
      return (area * arm) / (from.figure('wing-area') * from.figure('span'));
    },
  },
  {
    id: 'decalage',
    name: 'Decalage',
    unit: 'rad',
    of: 'model',
    scope: 'entry',
    explanation:
      'How much more the wing is tilted up than the tailplane. With the balance it decides at what speed the model settles.',
    formula: 'incidence of the wing − incidence of the tailplane',
    source: 'common practice, no source',
    range: 'models with a tailplane',
    compute: (from, { design }) => {
      if (design.layout === 'tailless') return from.absent(noTailplane);
      return (
        from.need(design.wing.incidence, "the wing's incidence") -
        from.need(design.tailplane?.incidence, "the tailplane's incidence")
      );
    },
  },
];
