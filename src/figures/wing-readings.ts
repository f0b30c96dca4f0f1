import type { PlanformPanel } from '../airframe/planform.ts';
import type { Design, Panel } from '../model/design.ts';
import type { Reader } from './definition.ts';

/** The wing's span in m, the inspected one where there is one. */
export function readSpan(from: Reader, design: Design): number {
  const inspected = design.inspected?.span ?? null;
  if (inspected !== null) return from.value(inspected, "the wing's inspected span");
  return from.value(design.wing.span, "the wing's span");
}

/** What the lengths of panels are called; each panel is read beginning with it. */
export const panelLengths = "the lengths of the wing's panels";

/**
 * The panels of the half wing in SI. A panel without a dihedral lies flat. Sweep counts only where a figure depends on
 * where the chords stand: only then is a panel without one an assumption.
 */
export function readPanels(
  from: Reader,
  panels: readonly Panel[],
  sweep: 'sweep matters' | 'sweep does not matter',
): PlanformPanel[] {
  return panels.map((panel) => ({
    length: from.value(panel.length, panelLengths),
    root: from.value(panel.root, "the chords of the wing's panels"),
    tip: from.value(panel.tip, "the chords of the wing's panels"),
    sweep: sweep === 'sweep matters' ? readSweep(from, panel) : 0,
    dihedral: readDihedral(from, panel, panels),
  }));
}

function readSweep(from: Reader, panel: Panel): number {
  if (panel.sweep !== null) return from.value(panel.sweep, "the sweep of the wing's panels");
  from.suppose('panels of the wing without a stated sweep have a straight leading edge');
  return 0;
}

function readDihedral(from: Reader, panel: Panel, panels: readonly Panel[]): number {
  if (panel.dihedral !== null) return from.value(panel.dihedral, "the dihedral of the wing's panels");
  from.note(
    panels.some((other) => other.dihedral !== null)
      ? 'panels of the wing without a stated dihedral lie flat'
      : 'no panel of the wing states a dihedral: they lie flat',
  );
  return 0;
}
