import type { Batch } from '../model/batch.ts';
import { type Defaults, defaults } from './defaults.ts';
import type { FigureDefinition, Reader } from './definition.ts';
import type { Figure, FigureSet, FigureUnit } from './figure.ts';
import type { Task } from './node.ts';
import { type FindTask, Propagation } from './propagate.ts';
import { figureDefinition, figureDefinitions } from './registry.ts';
import { type NumberedMotor, numberedMotors, type Subject } from './subject.ts';

/**
 * Works out figures of an aircraft, of a flight, or both, with uncertainty and basis. `'flight'` works out only the
 * figures of the model that figures of the flight read. A figure whose inputs are missing is there, absent with its
 * reason. A figure that is of the entry stands in `entry`, one of motors in each of `motors`. `assumed` is what stands in
 * for what was not measured.
 */
export function evaluate(
  subject: Subject,
  of: 'model' | 'flight' | 'all',
  assumed: Defaults = defaults,
): FigureSet {
  const motors = numberedMotors(subject.design);
  const asked = figureDefinitions.filter(
    (definition) => definition.of !== 'batch' && (of === 'all' || definition.of === of),
  );
  return run(
    (definition, motor) => bind(definition, subject, motor === null ? null : (motors[motor] ?? null)),
    asked.filter((definition) => !isOfMotors(definition, subject)),
    asked.filter((definition) => isOfMotors(definition, subject)),
    motors.length,
    assumed,
  );
}

/** Works out the figures of a batch of rubber; they stand in `entry`. */
export function evaluateBatch(batch: Batch): FigureSet {
  const asked = figureDefinitions.filter((definition) => definition.of === 'batch');
  return run(
    (definition) => {
      if (definition.scope !== 'batch') throw new Error(`The figure ${definition.id} is not one of batches.`);
      const { id, unit, compute } = definition;
      return { id, unit, motor: null, compute: (from) => compute(from, batch) };
    },
    asked,
    [],
    0,
    defaults,
  );
}

/** A number that rests on figures of the entry without being one of the registry's. */
export interface DerivedNumber {
  readonly id: string;
  readonly unit: FigureUnit;
  readonly compute: (from: Reader) => number;
}

/** Works out numbers that rest on figures of an aircraft, by the same law and in their order. */
export function evaluateDerived(
  subject: Subject,
  derived: readonly DerivedNumber[],
  assumed: Defaults = defaults,
): readonly Figure[] {
  const motors = numberedMotors(subject.design);
  const find = taskFinder(
    (definition, motor) => bind(definition, subject, motor === null ? null : (motors[motor] ?? null)),
    (definition) => isOfMotors(definition, subject),
    motors.length,
  );
  return new Propagation(find, assumed).figures(derived.map((number) => ({ ...number, motor: null })));
}

function isOfMotors(definition: FigureDefinition, subject: Subject): boolean {
  if (definition.scope !== 'entry') return definition.scope === 'motor';
  return definition.perMotor?.when(subject) ?? false;
}

function bind(definition: FigureDefinition, subject: Subject, motor: NumberedMotor | null): Task {
  const { id, unit } = definition;
  if (definition.scope === 'batch') throw new Error(`The figure ${id} is one of batches.`);
  const perMotor = definition.scope === 'motor' ? definition.compute : definition.perMotor?.compute;
  if (isOfMotors(definition, subject) && perMotor !== undefined) {
    if (motor === null) throw new Error(`The figure ${id} is one of motors: say which.`);
    return { id, unit, motor: motor.index, compute: (from) => perMotor(from, subject, motor) };
  }
  if (definition.scope !== 'entry') throw new Error(`The figure ${id} is not one of entries.`);
  const compute = definition.compute;
  return { id, unit, motor: null, compute: (from) => compute(from, subject) };
}

function run(
  bindTask: (definition: FigureDefinition, motor: number | null) => Task,
  ofEntry: readonly FigureDefinition[],
  ofMotors: readonly FigureDefinition[],
  motorCount: number,
  assumed: Defaults,
): FigureSet {
  const ofAnyMotor = new Set(ofMotors);
  const find = taskFinder(
    bindTask,
    (definition) => definition.scope === 'motor' || ofAnyMotor.has(definition),
    motorCount,
  );
  const places = Array.from({ length: motorCount }, (_, motor) => motor);
  const asked = [
    ...ofEntry.map(({ id }) => find(id, null)),
    ...places.flatMap((motor) => ofMotors.map(({ id }) => find(id, motor))),
  ];
  const figures = new Propagation(find, assumed).figures(asked);
  const byId = (from: number, count: number): ReadonlyMap<string, Figure> =>
    new Map(figures.slice(from, from + count).map((figure) => [figure.id, figure]));
  return {
    entry: byId(0, ofEntry.length),
    motors: places.map((motor) => byId(ofEntry.length + motor * ofMotors.length, ofMotors.length)),
  };
}

/** Finds the task of a figure, the same object each time it is asked for. */
function taskFinder(
  bindTask: (definition: FigureDefinition, motor: number | null) => Task,
  isOfMotor: (definition: FigureDefinition) => boolean,
  motorCount: number,
): FindTask {
  const entryTasks = new Map<string, Task>();
  const motorTasks = Array.from({ length: motorCount }, () => new Map<string, Task>());
  return (id, motor) => {
    const known = (motor === null ? undefined : motorTasks[motor]?.get(id)) ?? entryTasks.get(id);
    if (known !== undefined) return known;
    const definition = figureDefinition(id);
    if (definition === undefined) throw new Error(`There is no figure ${id}.`);
    const ofMotor = isOfMotor(definition);
    const task = bindTask(definition, ofMotor ? motor : null);
    (ofMotor && motor !== null ? motorTasks[motor]! : entryTasks).set(id, task);
    return task;
  };
}
