import {
  type StretchWays,
  stretchChart,
  stretchReach,
  stretchReadings,
  stretchWays,
} from '../../charts/stretch-chart.ts';
import type { Point } from '../../charts/thinned.ts';
import { torqueChart, torqueLine, torqueReach, torqueReadings } from '../../charts/torque-chart.ts';
import type { StretchTest, TorqueTest } from '../../model/batch.ts';
import { words } from '../../words.ts';
import { unitPairs } from '../units-shown.ts';
import { type Curve, imperialAxis, imperialPer, numberInBoth, same } from './curve.ts';

const say = words.rubber.chart;
const ofTorque = imperialPer('torque', unitPairs.torque);

/** The curves of a batch's stretch tests, those whose log could be read, on shared axes. */
export function stretchCurves(tests: readonly StretchTest[]): readonly Curve[] {
  const read = tests.flatMap((test) => {
    const ways = stretchWays(test);
    return ways === null || ways.out.length === 0 ? [] : [{ test, ways }];
  });
  const reach = stretchReach(read.map(({ ways }) => ways));
  return read.map(({ test, ways }, index) => stretchCurveOf(`stretch-${index + 1}`, test, ways, reach));
}

/** The curve of one stretch test. */
export function stretchCurveOf(id: string, test: StretchTest, ways: StretchWays, reach: Point): Curve {
  const readings = stretchReadings(ways);
  const returned = ways.back.length > 0;
  return {
    id,
    caption: test.file,
    title: say.stretchTitle(test.file),
    description: say.stretchDescription(readings.at(-1)?.ratio ?? 1, returned, test.broke),
    chart: stretchChart(ways, reach, test.broke, say),
    notes: [],
    heads: [say.stretch, say.forceOut, ...(returned ? [say.forceBack] : [])].map(same),
    rows: readings.map(({ ratio, out, back }) =>
      [number(ratio), number(out), ...(returned ? [number(back)] : [])].map(same),
    ),
  };
}

/** The curves of a batch's torque tests, those whose log could be read, on shared axes. */
export function torqueCurves(tests: readonly TorqueTest[]): readonly Curve[] {
  const read = tests.flatMap((test) => {
    const points = torqueLine(test);
    return points === null || points.length === 0 ? [] : [{ test, points }];
  });
  const reach = torqueReach(read.map(({ points }) => points));
  return read.map(({ test, points }, index) =>
    torqueCurveOf(`torque-${index + 1}`, test.file, points, reach),
  );
}

/** The curve of one torque test or log. */
export function torqueCurveOf(id: string, file: string, points: readonly Point[], reach: Point): Curve {
  const top = points[0] ?? { x: 0, y: 0 };
  return {
    id,
    caption: file,
    title: say.torqueTitle(file),
    description: say.torqueDescription(top.x, top.y),
    chart: torqueChart(
      points,
      reach,
      say,
      imperialAxis(words.charts.bench.torqueImperial, 'torque', unitPairs.torque),
    ),
    notes: [],
    heads: [same(say.turns), { metric: say.torque, imperial: words.charts.bench.torqueImperial }],
    rows: torqueReadings(points).map(({ turns, torque }) => [
      same(turns.toFixed(0)),
      torque === null ? same('–') : numberInBoth(torque, ofTorque, 1, 2),
    ]),
  };
}

function number(value: number | null): string {
  return value === null ? '–' : value.toFixed(2);
}
