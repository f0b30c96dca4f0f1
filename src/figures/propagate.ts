import type { Quantity } from '../quantities/quantity.ts';
import { Absence } from './absence.ts';
import { centralChange } from './central-change.ts';
import type { DefaultId, Defaults } from './defaults.ts';
import type { Reader } from './definition.ts';
import type { Counted, Figure } from './figure.ts';
import {
  foundationOf,
  type Input,
  type Node,
  newNode,
  restore,
  type Task,
  termOf,
  toFigure,
} from './node.ts';

/** Finds the task of a figure: of the motor given where the figure is one of motors, else of the entry. */
export type FindTask = (id: string, motor: number | null) => Task;

/** A relative change no larger than this is what is left of inputs that cancel. */
const rounding = 1e-14;

/**
 * Works out figures with uncertainty, basis and shares. The first pass records the base inputs each figure rests on,
 * through other figures too; then each input is moved by plus and minus its standard uncertainty and only the figures
 * that rest on it are worked out again. So inputs shared by several figures are correlated as they should be (law of
 * propagation, JCGM 100:2008, 5.1.2, by central differences as in its 5.1.3 note 2). Only figures that are asked for,
 * and those they read, are worked out.
 */
export class Propagation implements Reader {
  readonly #find: FindTask;
  readonly #defaults: Defaults;
  readonly #nodes = new Map<Task, Node>();
  readonly #inputs = new Map<Quantity, Input>();
  readonly #derived = new Map<object, Map<string, Quantity>>();
  readonly #kept = new Map<object, object>();
  #current: Node | null = null;
  /** The motor of the figure at work. */
  #motor: number | null = null;
  #pass = 0;
  #moved: Quantity | null = null;
  #movedValue = 0;

  /** `find` must return the same object for the same figure each time. */
  constructor(find: FindTask, defaults: Defaults) {
    this.#find = find;
    this.#defaults = defaults;
  }

  /** The figures of the tasks, in their order. */
  figures(asked: readonly Task[]): Figure[] {
    const nodes = asked.map((task) => this.#node(task));
    for (const input of this.#inputs.values()) this.#move(input);
    return nodes.map((node) => toFigure(node));
  }

  #node(task: Task): Node {
    const known = this.#nodes.get(task);
    if (known !== undefined) {
      if (known.running) throw new Error(`The figure ${task.id} depends on itself.`);
      return known;
    }
    const node = newNode(task);
    this.#nodes.set(task, node);
    const outer = this.#current;
    this.#current = node;
    try {
      node.value = this.#run(task);
      if (!Number.isFinite(node.value))
        node.absent = 'does not come out as a finite number from what is stated';
    } catch (thrown) {
      if (!(thrown instanceof Absence)) throw thrown;
      node.absent = thrown.reason;
    } finally {
      this.#current = outer;
    }
    node.running = false;
    for (const input of node.inputs) input.dependents.push(node);
    return node;
  }

  #move(input: Input): void {
    const { value, u } = input.quantity;
    if (u === 0) return;
    const up = this.#movedValues(input, value + u);
    const down = this.#movedValues(input, value - u);
    input.dependents.forEach((node, index) => {
      if (node.absent !== null) return;
      const change = centralChange(up[index]!, node.value, down[index]!);
      if (change === null) node.absent = `cannot be worked out within the uncertainty of ${input.name}`;
      else if (Math.abs(change) > rounding * Math.abs(node.value))
        node.contributions.push({ input: input.name, change });
    });
  }

  #movedValues(input: Input, to: number): number[] {
    this.#pass += 1;
    this.#moved = input.quantity;
    this.#movedValue = to;
    const values = input.dependents.map((node) => {
      node.moved = node.absent === null ? this.#again(node.task) : Number.NaN;
      node.pass = this.#pass;
      return node.moved;
    });
    this.#moved = null;
    return values;
  }

  #again(task: Task): number {
    try {
      return this.#run(task);
    } catch (thrown) {
      if (!(thrown instanceof Absence)) throw thrown;
      return Number.NaN;
    }
  }

  #run(task: Task): number {
    const outer = this.#motor;
    this.#motor = task.motor;
    try {
      return task.compute(this);
    } finally {
      this.#motor = outer;
    }
  }

  value(quantity: Quantity, name: string): number {
    if (this.#moved !== null) return quantity === this.#moved ? this.#movedValue : quantity.value;
    let input = this.#inputs.get(quantity);
    if (input === undefined) {
      input = { quantity, name, term: { from: 'input', name, quantity }, dependents: [] };
      this.#inputs.set(quantity, input);
    }
    this.#current?.inputs.add(input);
    this.#current?.worked.push(input.term);
    return quantity.value;
  }

  need(quantity: Quantity | null | undefined, name: string): number {
    if (quantity === null || quantity === undefined) throw new Absence(`needs ${name}`);
    return this.value(quantity, name);
  }

  count(value: number, name: Counted): number {
    if (this.#moved === null) this.#current?.worked.push({ from: 'count', name, value });
    return value;
  }

  assume(id: DefaultId): number {
    const { quantity, name, assumption } = this.#defaults[id];
    if (quantity.origin === 'exact') this.note(assumption);
    else this.suppose(assumption);
    return this.value(quantity, name);
  }

  derived(of: object, name: string, make: () => Pick<Quantity, 'kind' | 'value' | 'u' | 'origin'>): number {
    let named = this.#derived.get(of);
    if (named === undefined) {
      named = new Map();
      this.#derived.set(of, named);
    }
    let quantity = named.get(name);
    if (quantity === undefined) {
      quantity = { written: '', ...make() };
      named.set(name, quantity);
    }
    return this.value(quantity, name);
  }

  once<T extends object>(of: object, make: () => T): T {
    const kept = this.#kept.get(of);
    // Each key has one maker, so what is kept under it is of the maker's type.
    if (kept !== undefined) return kept as T;
    const made = make();
    this.#kept.set(of, made);
    return made;
  }

  figure(id: string): number {
    return this.#read(this.#find(id, this.#motor));
  }

  motorFigure(id: string, motor: number): number {
    return this.#read(this.#find(id, motor));
  }

  #read(task: Task): number {
    if (this.#moved !== null) return this.#readMoved(task);
    const node = this.#node(task);
    const reader = this.#current;
    if (reader !== null) {
      for (const input of node.inputs) reader.inputs.add(input);
      for (const assumption of node.assumptions) reader.assumptions.add(assumption);
      if (node.assumed) reader.assumed = true;
    }
    if (node.absent !== null) throw new Absence(node.absent);
    reader?.worked.push(termOf(node));
    return node.value;
  }

  /** Dependents are worked out in order, so a figure not of this pass does not rest on the input that moved. */
  #readMoved(task: Task): number {
    const node = this.#nodes.get(task);
    if (node === undefined) return this.#run(task);
    if (node.pass === this.#pass) {
      if (Number.isNaN(node.moved)) throw new Absence('');
      return node.moved;
    }
    if (node.absent !== null) throw new Absence(node.absent);
    return node.value;
  }

  peek(id: string): number | null {
    const task = this.#find(id, this.#motor);
    const node = this.#moved === null ? this.#node(task) : this.#nodes.get(task);
    return node === undefined || node.absent !== null ? null : node.value;
  }

  attempt(work: () => number): number | null {
    const reader = this.#current;
    const before = reader === null ? null : foundationOf(reader);
    try {
      return work();
    } catch (thrown) {
      if (!(thrown instanceof Absence)) throw thrown;
      // What it read on the way to nothing is no part of the figure.
      if (reader !== null && before !== null) restore(reader, before);
      return null;
    }
  }

  suppose(assumption: string): void {
    if (this.#moved !== null || this.#current === null) return;
    this.#current.assumptions.add(assumption);
    this.#current.assumed = true;
  }

  note(remark: string): void {
    if (this.#moved === null) this.#current?.assumptions.add(remark);
  }

  absent(reason: string): never {
    throw new Absence(reason);
  }
}
