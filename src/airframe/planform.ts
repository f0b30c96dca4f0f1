/** One panel of the half wing, from the centre line outwards, in metres and radians. */
export interface PlanformPanel {
  /** Along the panel. */
  readonly length: number;
  readonly root: number;
  readonly tip: number;
  /** How far the tip's leading edge lies behind the root's. */
  readonly sweep: number;
  /** Against the horizontal. */
  readonly dihedral: number;
}

/** A panel as seen from above: its span is projected on the horizontal. */
interface Projected {
  readonly width: number;
  /** Where its root stands: distance from the centre line, leading edge behind that at the centre line. */
  readonly from: number;
  readonly leadingEdge: number;
  readonly panel: PlanformPanel;
}

function projected(panels: readonly PlanformPanel[]): Projected[] {
  let from = 0;
  let leadingEdge = 0;
  return panels.map((panel) => {
    const width = panel.length * Math.cos(panel.dihedral);
    const seen = { width, from, leadingEdge, panel };
    from += width;
    leadingEdge += panel.sweep;
    return seen;
  });
}

/** Area of both halves, projected, in m²: Σ 2·l·cosΓ·(c_root + c_tip)/2. */
export function projectedArea(panels: readonly PlanformPanel[]): number {
  return projected(panels).reduce((sum, { width, panel }) => sum + width * (panel.root + panel.tip), 0);
}

/** Span of both halves, projected, in m. */
export function projectedSpan(panels: readonly PlanformPanel[]): number {
  return 2 * projected(panels).reduce((sum, { width }) => sum + width, 0);
}

export interface MeanAerodynamicChord {
  /** ∫c² dy / ∫c dy over the half span, m. */
  readonly chord: number;
  /** How far its leading edge lies behind that at the centre line, ∫x_LE c dy / ∫c dy, m. */
  readonly leadingEdge: number;
  /** Its distance from the centre line, ∫y c dy / ∫c dy, m. */
  readonly station: number;
}

/**
 * The chord that stands for the whole wing in moments, exact for panels with straight edges. NaN for a wing without area.
 * Standard definition (NACA Technical Report 751, Diehl 1942, from memory).
 */
export function meanAerodynamicChord(panels: readonly PlanformPanel[]): MeanAerodynamicChord {
  let area = 0;
  let squares = 0;
  let edges = 0;
  let stations = 0;
  for (const { width, from, leadingEdge, panel } of projected(panels)) {
    const { root, tip, sweep } = panel;
    const half = (root + tip) / 2;
    // ∫ of chord × share of the panel's width, from root to tip, per width.
    const lean = root / 6 + tip / 3;
    area += width * half;
    squares += (width * (root * root + root * tip + tip * tip)) / 3;
    edges += width * (leadingEdge * half + sweep * lean);
    stations += width * (from * half + width * lean);
  }
  return { chord: squares / area, leadingEdge: edges / area, station: stations / area };
}
