import { gravity } from '../flight/gravity.ts';
import type { Rotation } from '../model/design.ts';
import { torqueAt } from '../rubber/torque-log.ts';
import { breakTurnsOfTest, torqueRatio } from '../rubber/torque-test.ts';
import type { FigureDefinition, Reader } from './definition.ts';
import { applied, fraction, number, power, product, total, words } from './formula.ts';
import { by, orElse } from './formula-line.ts';
import { readTorqueLogOf } from './log-readings.ts';
import { batchOf, readDensity, readSkeinLength, readSkeinMass } from './skein-readings.ts';
import { motorCount, type NumberedMotor, numberedMotors, type Subject } from './subject.ts';
import * as the from './symbols.ts';
import { turnsOnLog } from './torque-energy.ts';
import { hasTorqueTest, readFromTorqueTests } from './torque-test-readings.ts';
import { turnsWound, windingAtLaunch } from './winding.ts';

/** A motor that turns its propeller clockwise, seen from behind, pulls the left wing down: the balance would go right. */
const towards: Readonly<Record<Rotation, 1 | -1>> = { clockwise: 1, anticlockwise: -1 };

/** Figures of the torque the motors turn their propellers with. */
export const torqueFigures: readonly FigureDefinition[] = [
  {
    id: 'launch-torque',
    name: 'Launch torque',
    unit: 'N.m',
    of: 'flight',
    scope: 'motor',
    explanation:
      'The torque of one motor as the model was let go. It decides the climb off the hand, and how hard the model tries to roll. As read on a torque meter; else from the motor’s torque log at the turns wound; else from a torque test of the batch, at the same share of the break turns.',
    moves: 'A thicker, shorter skein and more turns raise it.',
    formula: [
      by(words('as read on a torque meter')),
      orElse(applied(the.torque, the.turns), 'of the motor’s torque log'),
      orElse(
        product(
          applied(the.testTorque, the.woundShare),
          power(fraction(the.massPerLength, the.massPerLengthOfTest), '1.5'),
        ),
        'of the batch’s torque test',
      ),
    ],
    source: 'measured; scaling of skeins of one rubber (common practice, no source)',
    range: 'a test of a skein not too unlike this one; beyond the top of a log or test it stays at the top',
    compute: readLaunchTorque,
  },
  {
    id: 'mean-torque',
    name: 'Mean torque',
    unit: 'N.m',
    of: 'flight',
    scope: 'motor',
    explanation:
      'The even torque that would give the same energy over the same turns. The ratio of launch torque to it says how much the motor bursts at first.',
    moves:
      'A thicker, shorter skein raises it; a longer one of the same rubber spreads its energy over more turns.',
    formula: [
      by(
        fraction(the.energyOfSkein, product(number('2'), the.pi, the.turns)),
        'over the turns that the energy was taken over',
      ),
    ],
    source: 'definition; work of a torque',
    range: 'as the energy per gram of rubber',
    compute: readMeanTorque,
  },
  {
    id: 'net-torque-offset',
    name: 'Net torque offset',
    unit: 'm',
    of: 'flight',
    scope: 'entry',
    explanation:
      'How far the balance would have to move sideways to hold against the mean torque of all motors together; positive to the right. Motors of both hands cancel. It is a first guess of how much there is to trim away: warps and side-thrust do most of that work.',
    moves: 'Pairs of motors of both hands bring it to zero; a thicker skein raises it.',
    formula: [
      by(fraction(total(product(the.rotation, the.count, the.meanTorque)), product(the.mass, the.gravity))),
    ],
    source: 'balance of moments',
    range: 'a first guess; all motors running',
    compute: (from, subject) => {
      const run = subject.flown?.flight.motorsRun ?? null;
      if (run !== null && run < motorCount(subject.design))
        return from.absent('needs a flight on which all motors ran');
      const torque = numberedMotors(subject.design).reduce((sum, { motor, index, suffix }) => {
        if (motor.rotation === null) return from.absent(`needs the rotation of the propeller${suffix}`);
        return (
          sum +
          towards[motor.rotation] * from.count(motor.count, 'motors') * from.motorFigure('mean-torque', index)
        );
      }, 0);
      return torque / (from.figure('flying-mass') * gravity);
    },
  },
];

function readLaunchTorque(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const read = subject.flown?.flight.launchTorque ?? [];
  const own = read.length > 1 ? read[motor.index] : read[0];
  if (own !== undefined)
    return from.value(own, `the launch torque of the flight${read.length > 1 ? motor.suffix : ''}`);
  const winding = windingAtLaunch(from, subject, motor);
  const log = readTorqueLogOf(from, subject, motor);
  const batch = batchOf(subject, motor);
  if (log === null && (batch === null || !hasTorqueTest(from, batch)))
    return from.absent(`needs the launch torque${motor.suffix}, a torque log or a torque test of the batch`);
  if (winding.turns() === null) return from.absent(`needs the turns of the flight${motor.suffix}`);
  if (log !== null) return log.calibration * torqueAt(log.curve, turnsOnLog(from, log, winding));
  const skein = {
    mass: readSkeinMass(from, subject, motor),
    length: readSkeinLength(from, subject, motor),
  };
  const share = winding.share();
  const constant = from.assume('turns-constant');
  const density = readDensity(from, subject, motor);
  return readFromTorqueTests(from, batch!, (curve, measures, { file }) => {
    const turns = share * breakTurnsOfTest(constant, density, measures);
    if (turns > curve.top)
      from.note(`the test ${file} goes less far than the motor was wound: its torque is taken at its top`);
    return measures.calibration * torqueAt(curve, turns) * torqueRatio(skein, measures);
  });
}

function readMeanTorque(from: Reader, subject: Subject, motor: NumberedMotor): number {
  const winding = windingAtLaunch(from, subject, motor);
  const log = readTorqueLogOf(from, subject, motor);
  const turns = log === null ? turnsWound(from, winding) : turnsOnLog(from, log, winding) - log.curve.end;
  const energy = readSkeinMass(from, subject, motor) * from.figure('energy-per-gram-of-rubber');
  return energy / (2 * Math.PI * turns);
}
