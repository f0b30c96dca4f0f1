import type { Quantity } from '../quantities/quantity.ts';
import { basisOf } from './basis.ts';
import type { Reader } from './definition.ts';
import type { Figure, FigureUnit, Term } from './figure.ts';
import { type Contribution, rootSum } from './root-sum.ts';

/** A figure ready to run: bound to its subject and, where it is one of motors, to its motor. */
export interface Task {
  readonly id: string;
  readonly unit: FigureUnit;
  /** Its motor, from 0; null for a figure of the entry or of a batch. */
  readonly motor: number | null;
  readonly compute: (from: Reader) => number;
}

/** A base input met on the way. */
export interface Input {
  readonly quantity: Quantity;
  readonly name: string;
  /** As a figure that reads it names it. */
  readonly term: Term;
  /** Every figure that rests on it, each after those it reads. */
  readonly dependents: Node[];
}

/** A figure while it is worked out: what it gave, and everything it rests on. */
export interface Node {
  readonly task: Task;
  running: boolean;
  value: number;
  absent: string | null;
  readonly inputs: Set<Input>;
  /** What it read itself, in order. */
  readonly worked: Term[];
  /** As a figure that reads it names it; made when the first one does. */
  term: Term | null;
  readonly assumptions: Set<string>;
  assumed: boolean;
  /** The pass in which `moved` was worked out. */
  pass: number;
  moved: number;
  readonly contributions: Contribution[];
}

/** A figure that is about to be worked out. */
export function newNode(task: Task): Node {
  return {
    task,
    running: true,
    value: Number.NaN,
    absent: null,
    inputs: new Set(),
    worked: [],
    term: null,
    assumptions: new Set(),
    assumed: false,
    pass: 0,
    moved: Number.NaN,
    contributions: [],
  };
}

/** What a figure rests on at some point of being worked out. */
export interface Foundation {
  readonly inputs: readonly Input[];
  /** How many terms it had read. */
  readonly worked: number;
  readonly assumptions: readonly string[];
  readonly assumed: boolean;
}

/** What a node rests on so far. */
export function foundationOf(node: Node): Foundation {
  return {
    inputs: [...node.inputs],
    worked: node.worked.length,
    assumptions: [...node.assumptions],
    assumed: node.assumed,
  };
}

/** Lets a node rest again on what it rested on then, and on nothing that it met since. */
export function restore(node: Node, then: Foundation): void {
  node.inputs.clear();
  node.assumptions.clear();
  for (const input of then.inputs) node.inputs.add(input);
  for (const assumption of then.assumptions) node.assumptions.add(assumption);
  node.worked.length = then.worked;
  node.assumed = then.assumed;
}

/** A node as a figure that reads it names it. */
export function termOf(node: Node): Term {
  const { id, unit, motor } = node.task;
  node.term ??= { from: 'figure', id, unit, motor, value: node.value };
  return node.term;
}

/** What a node says once every base input was moved. */
export function toFigure(node: Node): Figure {
  const { id, unit } = node.task;
  if (node.absent !== null) return { id, unit, absent: node.absent };
  const { u, shares } = rootSum(node.contributions);
  if (!Number.isFinite(u)) return { id, unit, absent: 'has no finite uncertainty from what is stated' };
  const origins = Array.from(node.inputs, ({ quantity }) => quantity.origin);
  return {
    id,
    unit,
    value: node.value,
    u,
    basis: basisOf(origins, node.assumed),
    assumptions: [...node.assumptions],
    worked: node.worked,
    shares,
  };
}
