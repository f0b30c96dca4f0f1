import { idealStaticPower } from '../flight/actuator-disc.ts';
import { gravity } from '../flight/gravity.ts';
import { integrateRun, thrustImpulse } from '../rubber/thrust-log.ts';
import type { FigureDefinition } from './definition.ts';
import { fraction, integral, number, power, product, root, total, words } from './formula.ts';
import { by } from './formula-line.ts';
import { readThrustRun } from './log-readings.ts';
import { readEnergyOfWinding } from './rubber-energy.ts';
import { readSkeinMass } from './skein-readings.ts';
import { numberedMotors } from './subject.ts';
import * as the from './symbols.ts';
import { windingOfLog } from './winding.ts';

/** Figures of what a motor and its propeller pull on the bench, the model standing still. */
export const thrustFigures: readonly FigureDefinition[] = [
  {
    id: 'thrust-impulse',
    name: 'Impulse on the bench',
    unit: 'N.s',
    of: 'model',
    scope: 'motor',
    explanation:
      'How much one motor pulls, and how long, in one number: the area under its thrust log. What the rig reads at rest is taken off first, and the run is counted while the thrust is above a twentieth of its peak.',
    moves: 'More rubber wound closer to the break, and a propeller that suits it, raise it.',
    formula: [by(integral(the.thrust, the.time), 'over the run')],
    source: 'definition; trapezoid between the readings of the log',
    range:
      'the model standing still: in flight a propeller mostly pulls less, but one whose blades stall standing still may not',
    compute: (from, subject, motor) => {
      const { run, calibration } = readThrustRun(from, subject, motor);
      return calibration * thrustImpulse(run);
    },
  },
  {
    id: 'mean-thrust',
    name: 'Mean thrust on the bench',
    unit: 'N',
    of: 'model',
    scope: 'motor',
    explanation: 'The even pull that would give the same impulse in the same time.',
    moves: 'A thicker skein, which turns the propeller faster for a shorter time, raises it.',
    formula: [by(fraction(the.impulse, the.runTime))],
    substitution: {
      units: ['N'],
      of: (given) => fraction(given.figure('thrust-impulse', 'N·s'), given.figure('run-time', 's')),
    },
    source: 'definition',
    range: 'the model standing still',
    compute: (from) => from.figure('thrust-impulse') / from.figure('run-time'),
  },
  {
    id: 'peak-thrust',
    name: 'Peak thrust on the bench',
    unit: 'N',
    of: 'model',
    scope: 'motor',
    explanation: 'The hardest pull of one motor, mostly in the first second.',
    moves:
      'A thicker skein and more turns raise it; a propeller pitched so steeply that it stalls lowers it.',
    formula: [by(words('the highest reading, corrected for what the rig reads at rest'))],
    source: 'measured',
    range: 'the model standing still; a single reading, so a knock on the rig counts',
    compute: (from, subject, motor) => {
      const { run, calibration } = readThrustRun(from, subject, motor);
      return calibration * run.peak;
    },
  },
  {
    id: 'run-time',
    name: 'Run time on the bench',
    unit: 's',
    of: 'model',
    scope: 'motor',
    explanation:
      'How long the motor pulls with the model held still. In flight it runs down sooner, for a propeller that moves forward turns faster.',
    moves: 'A longer, thinner skein or a larger, more steeply pitched propeller raises it.',
    formula: [
      by(words('from the first upward to the last downward crossing of 5 % of the peak, interpolated')),
    ],
    source: 'definition; common practice, no source',
    range: 'the model standing still',
    compute: (from, subject, motor) => readThrustRun(from, subject, motor).runTime,
  },
  {
    id: 'static-figure-of-merit',
    name: 'Figure of merit on the bench',
    unit: '1',
    kind: 'share',
    of: 'flight',
    scope: 'motor',
    explanation:
      'How much of the rubber’s energy reaches the air when the model is held still: the least energy that could have made the thrust, over what the skein held at the turns of the log. Friction, blades that stall at first and a twisting wake take the rest.',
    moves: 'Blades that do not stall and hooks with little friction raise it.',
    formula: [
      by(
        fraction(
          integral(
            fraction(power(the.pull, '1.5'), root(product(number('2'), the.airDensity, the.disc))),
            the.time,
          ),
          the.energyOfSkein,
        ),
        'the energy is that at the turns of the log',
      ),
    ],
    source: 'momentum theory of the actuator disc (Rankine, Froude); air of the standard atmosphere',
    range: 'the model standing still; it cannot exceed 1',
    compute: (from, subject, motor) => {
      const { run, calibration, reference } = readThrustRun(from, subject, motor);
      const diameter = from.need(
        motor.motor.propeller?.diameter,
        `the diameter of the propeller${motor.suffix}`,
      );
      if (reference.turns === null) return from.absent(`needs the turns of the log ${reference.file}`);
      const winding = windingOfLog(from, reference.turns, reference.file);
      const density = from.assume('bench-air');
      const disc = (Math.PI / 4) * diameter * diameter;
      const ideal = integrateRun(run, (thrust) => idealStaticPower(calibration * thrust, density, disc));
      const energy = readEnergyOfWinding(from, subject, motor, winding) * readSkeinMass(from, subject, motor);
      return ideal / energy;
    },
  },
  {
    id: 'thrust-margin',
    name: 'Thrust margin',
    unit: '1',
    of: 'flight',
    scope: 'entry',
    explanation:
      'What all motors pull standing still, on average, over what it takes to hold the model up in level flight. Below 1 it would hardly hold its height over the run; above 1 it may, but need not, for a propeller mostly pulls less in flight than standing still.',
    moves: 'More thrust, a flatter glide or a lighter model raises it.',
    formula: [
      by(
        fraction(
          product(total(product(the.count, the.meanThrust)), the.glideRatio),
          product(the.mass, the.gravity),
        ),
      ),
    ],
    source: 'balance of forces in level flight',
    range:
      'mostly more than in flight, for thrust falls with speed; of the bench run, wound to the turns of its log, whatever the flight was wound to',
    compute: (from, subject) => {
      const thrust = numberedMotors(subject.design).reduce(
        (sum, { motor, index }) =>
          sum + from.count(motor.count, 'motors') * from.motorFigure('mean-thrust', index),
        0,
      );
      return (thrust * from.figure('glide-ratio')) / (from.figure('flying-mass') * gravity);
    },
  },
];
