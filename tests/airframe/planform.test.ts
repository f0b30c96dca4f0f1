import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  meanAerodynamicChord,
  type PlanformPanel,
  projectedArea,
  projectedSpan,
} from '../../src/airframe/planform.ts';

const flat = (length: number, root: number, tip: number, sweep = 0): PlanformPanel => ({
  length,
  root,
  tip,
  sweep,
  dihedral: 0,
});

const anyPanel = fc.record({
  length: fc.double({ min: 0.05, max: 2, noNaN: true }),
  root: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
  tip: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
  sweep: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  dihedral: fc.double({ min: -0.2, max: 0.8, noNaN: true }),
});
const anyPanels = fc.array(anyPanel, { minLength: 1, maxLength: 4 });

describe('the planform of panels', () => {
  it('lets the mean aerodynamic chord of a swept, tapered half wing lie behind the root', () => {
    // Root 400, tip 200 at y = 1000 with its leading edge at 600. By hand, at the station 444.4444 of the published mean
    // aerodynamic chord the leading edge lies at 600 · 444.4444/1000 = 266.6667.
    expect(meanAerodynamicChord([flat(1000, 400, 200, 600)]).leadingEdge).toBeCloseTo(266.6667, 4);
  });

  it('narrows a panel by the cosine of its dihedral', () => {
    // cos 60° = 1/2: a panel of 1 m covers half a metre, on both sides one metre.
    const panels = [{ ...flat(1, 0.2, 0.2), dihedral: Math.PI / 3 }];
    expect(projectedSpan(panels)).toBeCloseTo(1, 12);
    expect(projectedArea(panels)).toBeCloseTo(0.2, 12);
  });

  it('has the chord itself as mean aerodynamic chord of a rectangle, at mid half span', () => {
    const mean = meanAerodynamicChord([flat(0.8, 0.25, 0.25), flat(0.4, 0.25, 0.25)]);
    expect(mean.chord).toBeCloseTo(0.25, 12);
    expect(mean.station).toBeCloseTo(0.6, 12);
    expect(mean.leadingEdge).toBeCloseTo(0, 12);
  });

  it('agrees with the integrals ∫c² dy/∫c dy, ∫x c dy/∫c dy and ∫y c dy/∫c dy summed strip by strip', () => {
    fc.assert(
      fc.property(anyPanels, (panels) => {
        const strips = 4000;
        let area = 0;
        let squares = 0;
        let edges = 0;
        let stations = 0;
        let y = 0;
        let edge = 0;
        for (const { length, root, tip, sweep, dihedral } of panels) {
          const width = (length * Math.cos(dihedral)) / strips;
          for (let strip = 0; strip < strips; strip++) {
            const share = (strip + 0.5) / strips;
            const chord = root + (tip - root) * share;
            area += chord * width;
            squares += chord * chord * width;
            edges += (edge + sweep * share) * chord * width;
            stations += (y + (strip + 0.5) * width) * chord * width;
          }
          y += width * strips;
          edge += sweep;
        }
        const mean = meanAerodynamicChord(panels);
        expect(mean.chord).toBeCloseTo(squares / area, 6);
        expect(mean.leadingEdge).toBeCloseTo(edges / area, 6);
        expect(mean.station).toBeCloseTo(stations / area, 6);
        expect(projectedArea(panels)).toBeCloseTo(2 * area, 6);
      }),
      { seed: 11, numRuns: 40 },
    );
  });

  it('is the same wing when a panel is cut in two', () => {
    fc.assert(
      fc.property(anyPanel, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (panel, at) => {
        const middle = panel.root + (panel.tip - panel.root) * at;
        const cut = [
          { ...panel, length: panel.length * at, tip: middle, sweep: panel.sweep * at },
          { ...panel, length: panel.length * (1 - at), root: middle, sweep: panel.sweep * (1 - at) },
        ];
        expect(projectedArea(cut)).toBeCloseTo(projectedArea([panel]), 12);
        expect(meanAerodynamicChord(cut).chord).toBeCloseTo(meanAerodynamicChord([panel]).chord, 12);
        expect(meanAerodynamicChord(cut).leadingEdge).toBeCloseTo(
          meanAerodynamicChord([panel]).leadingEdge,
          12,
        );
      }),
      { seed: 12, numRuns: 100 },
    );
  });
});
