import type { FigureSet } from '../figures/figure.ts';
import { isPresent } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';

/** The wing from above, as points in a box of the size given; lengths scaled alike in both directions. */
export interface WingOutline {
  readonly width: number;
  readonly height: number;
  /** As an SVG `points` attribute. */
  readonly points: string;
  readonly from: 'panels' | 'chord';
}

/** Outline from the panels, else a rectangle of span and mean chord; null where neither is known. */
export function wingOutline(design: Design, figures: FigureSet, width: number): WingOutline | null {
  const half = fromPanels(design) ?? fromChord(design, figures);
  if (half === null) return null;
  const span = 2 * Math.max(...half.leading.map((point) => point.y));
  const scale = width / span;
  const deepest = Math.max(...half.trailing.map((point) => point.x));
  const right = [...half.leading, ...half.trailing.toReversed()];
  const left = [...half.trailing, ...half.leading.toReversed()].map((point) => ({ ...point, y: -point.y }));
  const points = [...right, ...left]
    .map((point) => `${rounded(width / 2 + point.y * scale)},${rounded(point.x * scale)}`)
    .join(' ');
  return { width, height: rounded(deepest * scale), points, from: half.from };
}

/** Metres: backwards from the foremost point, and outwards from the centre line. */
interface Corner {
  readonly x: number;
  readonly y: number;
}

interface Half {
  readonly leading: readonly Corner[];
  readonly trailing: readonly Corner[];
  readonly from: 'panels' | 'chord';
}

function fromPanels({ wing }: Design): Half | null {
  if (wing.panels === null || wing.panels.length === 0) return null;
  const leading: Corner[] = [];
  const trailing: Corner[] = [];
  let y = 0;
  let x = 0;
  for (const panel of wing.panels) {
    leading.push({ x, y });
    trailing.push({ x: x + panel.root.value, y });
    y += panel.length.value * Math.cos(panel.dihedral?.value ?? 0);
    x += panel.sweep?.value ?? 0;
    leading.push({ x, y });
    trailing.push({ x: x + panel.tip.value, y });
  }
  const front = Math.min(...leading.map((point) => point.x));
  const shifted = (points: readonly Corner[]) => points.map((point) => ({ ...point, x: point.x - front }));
  return { leading: shifted(leading), trailing: shifted(trailing), from: 'panels' };
}

function fromChord({ wing }: Design, figures: FigureSet): Half | null {
  const chord = figures.entry.get('mean-chord');
  if (!isPresent(chord)) return null;
  const y = wing.span.value / 2;
  return {
    leading: [
      { x: 0, y: 0 },
      { x: 0, y },
    ],
    trailing: [
      { x: chord.value, y: 0 },
      { x: chord.value, y },
    ],
    from: 'chord',
  };
}

function rounded(length: number): number {
  return Math.round(length * 100) / 100;
}
