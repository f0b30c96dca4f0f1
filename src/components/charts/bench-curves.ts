import type { EntryRecord } from '../../almanac/almanac.ts';
import { stretchReach, stretchWays } from '../../charts/stretch-chart.ts';
import { thrustChart, thrustLine, thrustReadings } from '../../charts/thrust-chart.ts';
import { torqueLine, torqueReach } from '../../charts/torque-chart.ts';
import { withWorkingPoint } from '../../charts/working-point.ts';
import { type Figure, isPresent } from '../../figures/figure.ts';
import type { Batch } from '../../model/batch.ts';
import type { Flight } from '../../model/entry.ts';
import { words } from '../../words.ts';
import { inBoth, type Measure, measureOf, measureOfFigure, plainInBoth } from '../measure.ts';
import { measureOfQuantity } from '../quantity-text.ts';
import { unitPairs } from '../units-shown.ts';
import { type Curve, imperialAxis, imperialPer, numberInBoth, same } from './curve.ts';
import { stretchCurveOf, torqueCurveOf } from './test-curves.ts';

const say = words.charts.bench;

/**
 * What was measured of the motors of an aircraft, and of the rubber they are made of, with the points where the flight of
 * its figures worked. Empty where nothing was.
 *
 * @param batches of rubber that are known, by id
 */
export function benchCurves(record: EntryRecord, batches: ReadonlyMap<string, Batch>): readonly Curve[] {
  const number = record.judged.bestCounted ?? record.judged.bestProvisional;
  const flight = record.flights.find((one) => one.flight.number === number)?.flight ?? null;
  const motors = record.headline.design.motors.map((_, index) => index);
  const drawn = new Set<string>();
  return motors.flatMap((motor) =>
    [
      thrustCurve(record, motor),
      torqueCurve(record, motor, flight),
      stretchCurve(record, motor, flight, batches),
    ]
      .filter((curve) => curve !== null)
      // Motors of one log, or of one batch wound alike, are drawn once.
      .filter((curve) => {
        const key = JSON.stringify([curve.title, curve.chart.working]);
        return !drawn.has(key) && drawn.add(key);
      }),
  );
}

function captionOf(record: EntryRecord, motor: number, text: string): string {
  return record.headline.design.motors.length === 1 ? text : say.ofMotor(motor + 1, text);
}

function thrustCurve(record: EntryRecord, motor: number): Curve | null {
  const file = record.headline.design.motors[motor]?.thrustLog?.file;
  const log = file === undefined ? undefined : record.logs.thrust.get(file);
  const line = log === undefined ? null : thrustLine(log.points);
  if (file === undefined || line === null) return null;
  const figures = record.figures.motors[motor];
  const run = shownFigure(figures?.get('run-time'));
  const peak = shownFigure(figures?.get('peak-thrust'));
  const mean = shownFigure(figures?.get('mean-thrust'));
  const level = figures?.get('mean-thrust');
  return {
    id: `thrust-curve-${motor + 1}`,
    caption: captionOf(record, motor, file),
    title: say.thrustTitle(file),
    description: say.thrustDescription(
      run?.metricPlain ?? '–',
      peak?.metricPlain ?? '–',
      mean?.metricPlain ?? null,
    ),
    chart: thrustChart(
      line,
      isPresent(level) ? level.value : null,
      say,
      imperialAxis(say.thrustImperial, 'force', unitPairs.force),
    ),
    notes:
      run === null || peak === null || mean === null
        ? []
        : [inBoth((system) => say.thrustExplained(run[system], peak[system], mean[system]))],
    heads: [same(say.time), { metric: say.thrust, imperial: say.thrustImperial }],
    rows: thrustReadings(line).map(({ time, thrust }) => [
      same(String(time)),
      numberInBoth(thrust, imperialPer('force', unitPairs.force), 3, 2),
    ]),
  };
}

function torqueCurve(record: EntryRecord, motor: number, flight: Flight | null): Curve | null {
  const file = record.headline.design.motors[motor]?.torqueLog?.file;
  const log = file === undefined ? undefined : record.logs.torque.get(file);
  const line = log === undefined ? null : torqueLine(log);
  if (file === undefined || line === null || line.length === 0) return null;
  const curve = {
    ...torqueCurveOf(`torque-curve-${motor + 1}`, file, line, torqueReach([line])),
    caption: captionOf(record, motor, file),
  };
  const turns = (flight?.turns.length ?? 0) > 1 ? flight?.turns[motor] : flight?.turns[0];
  if (flight === null || turns === undefined) return curve;
  const top = line[0]!.x;
  const wound = plainInBoth(measureOfQuantity(turns, unitPairs.turns)).metric;
  return {
    ...curve,
    chart: withWorkingPoint(curve.chart, line, turns.value, 0, say.flight(flight.number)),
    notes: [
      same(
        turns.value > top
          ? say.torqueBeyond(flight.number, wound, String(top))
          : say.torqueExplained(flight.number, wound),
      ),
    ],
  };
}

function stretchCurve(
  record: EntryRecord,
  motor: number,
  flight: Flight | null,
  batches: ReadonlyMap<string, Batch>,
): Curve | null {
  const batch = batches.get(record.headline.design.motors[motor]?.skein?.batch ?? '');
  const stretch = record.stretchesAtLaunch[motor];
  if (batch === undefined || !isPresent(stretch)) return null;
  // The test that went furthest says most about rubber wound hard.
  const [best] = batch.stretchTests
    .flatMap((test) => {
      const ways = stretchWays(test);
      const top = ways?.out.at(-1)?.x;
      return ways === null || top === undefined || ways.back.length === 0 ? [] : [{ test, ways, top }];
    })
    .sort((a, b) => b.top - a.top);
  if (best === undefined) return null;
  const { test, ways, top } = best;
  const curve = stretchCurveOf(`stretch-curve-${motor + 1}`, test, ways, stretchReach([ways]));
  const stated = flight !== null && flight.turns.length > 0;
  return {
    ...curve,
    caption: captionOf(record, motor, say.batch(batch.label)),
    chart: withWorkingPoint(
      curve.chart,
      ways.back,
      stretch.value,
      stretch.u,
      flight === null ? '' : say.flight(flight.number),
    ),
    notes: [
      same(
        say.stretchExplained(
          measureOf(stretch.value, stretch.u, 'number', unitPairs.plain).metric,
          stated ? flight.number : null,
        ),
      ),
      ...(stretch.value > top ? [same(say.stretchBeyond(top.toFixed(1)))] : []),
    ],
  };
}

function shownFigure(figure: Figure | undefined): Measure | null {
  return isPresent(figure) ? measureOfFigure(figure) : null;
}
