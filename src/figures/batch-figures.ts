import { workBack, workOut } from '../rubber/stretch-energy.ts';
import type { FigureDefinition } from './definition.ts';
import { fraction, integral } from './formula.ts';
import { by } from './formula-line.ts';
import { readMeanOfTests, readTestEnergy, returnedTestsOf, stretchTestsOf } from './stretch-readings.ts';
import * as the from './symbols.ts';

/** Figures of a batch of rubber strip, from its stretch tests. */
export const batchFigures: readonly FigureDefinition[] = [
  {
    id: 'stretch-energy-in',
    name: 'Energy put in by stretching',
    unit: 'J/kg',
    of: 'batch',
    scope: 'batch',
    explanation:
      'The work it takes to stretch a gram of the strip to the top of the test: the area under the curve of the way out.',
    moves: 'Stretching further raises it; warm rubber, and rubber stretched before, takes less.',
    formula: [by(fraction(integral(the.force, the.travel), the.testMass), 'on the way out')],
    source: 'definition of work; trapezoid between the points of the log',
    range: 'depends on how far the test went, on temperature and on how often the strip was stretched before',
    compute: (from, batch) => {
      const tests = stretchTestsOf(from, batch);
      if (tests.length === 0) return from.absent('needs a stretch test');
      return readTestEnergy(from, batch, tests, ({ curve }) => workOut(curve));
    },
  },
  {
    id: 'stretch-energy-out',
    name: 'Energy given back from the stretch',
    unit: 'J/kg',
    of: 'batch',
    scope: 'batch',
    explanation:
      'The work a gram of the strip gives back from the top of the test: the area under the curve of the way back. This is what can turn a propeller.',
    moves:
      'Stretching further and better rubber raise it; holding the strip long before letting it back lowers it.',
    formula: [by(fraction(integral(the.force, the.travel), the.testMass), 'on the way back')],
    source: 'definition of work; trapezoid between the points of the log',
    range: 'depends on how far the test went, on temperature and on how long the strip was held',
    compute: (from, batch) => {
      const tests = returnedTestsOf(from, batch);
      if (tests.length === 0) return from.absent('needs a stretch test with its way back');
      return readTestEnergy(from, batch, tests, ({ curve }) => workBack(curve));
    },
  },
  {
    id: 'return-ratio',
    name: 'Share of the energy given back',
    unit: '1',
    kind: 'share',
    of: 'batch',
    scope: 'batch',
    explanation:
      'How much of the work put in by stretching comes back; the rest warms the rubber. Length, mass and calibration cancel.',
    moves: 'Rubber that was stretched before, a warm room and going back at once raise it.',
    formula: [by(fraction(the.energyOut, the.energyIn))],
    source: 'definition',
    range: 'as the two energies',
    compute: (from, batch) => {
      const tests = returnedTestsOf(from, batch);
      if (tests.length === 0) return from.absent('needs a stretch test with its way back');
      from.derived(batch, 'the force of the logs', () => ({
        kind: 'number',
        value: 1,
        u: 0,
        origin: 'logged',
      }));
      const ratios = tests.map(({ curve }) => workBack(curve) / workOut(curve));
      return readMeanOfTests(from, batch, ratios, 0);
    },
  },
];
