import type { StretchTest, TorqueTest } from '../../model/batch.ts';
import { dateInWords, words } from '../../words.ts';
import { type InBoth, plainInBoth } from '../measure.ts';
import { measureOfQuantity } from '../quantity-text.ts';
import { unitPairs } from '../units-shown.ts';
import { same } from './curve.ts';

/** A table of tests, one line for each. */
export interface TestTable {
  readonly columns: readonly { readonly head: string; readonly number: boolean }[];
  readonly rows: readonly { readonly file: string; readonly cells: readonly InBoth[] }[];
}

interface TestColumn<T> {
  readonly head: string;
  readonly number: boolean;
  readonly cell: (test: T) => InBoth;
}

const say = words.rubber;
const none = same('–');

/** What tests of both kinds tell. */
const length: TestColumn<StretchTest | TorqueTest> = {
  head: say.length,
  number: true,
  cell: (test) => plainInBoth(measureOfQuantity(test.length, unitPairs.size)),
};
const mass: TestColumn<StretchTest | TorqueTest> = {
  head: say.mass,
  number: true,
  cell: (test) => plainInBoth(measureOfQuantity(test.mass, unitPairs.mass)),
};
const cycle: TestColumn<StretchTest | TorqueTest> = {
  head: say.cycle,
  number: true,
  cell: (test) => (test.cycle === null ? none : same(String(test.cycle))),
};
const points: TestColumn<StretchTest | TorqueTest> = {
  head: say.points,
  number: true,
  cell: (test) => same(test.points === null ? say.unread : String(test.points.length)),
};

const stretchColumns: readonly TestColumn<StretchTest>[] = [
  {
    head: say.date,
    number: false,
    cell: ({ date }) => (date === null ? none : same(dateInWords(date))),
  },
  { head: say.tester, number: false, cell: ({ by }) => same(by ?? '–') },
  length,
  mass,
  {
    head: say.temperature,
    number: true,
    cell: ({ temperature }) =>
      temperature === null ? none : plainInBoth(measureOfQuantity(temperature, unitPairs.temperature)),
  },
  cycle,
  {
    head: say.broke,
    number: false,
    cell: ({ broke }) => same(broke ? words.facts.yes : words.facts.no),
  },
  points,
];

const torqueColumns: readonly TestColumn<TorqueTest>[] = [
  {
    head: say.strands,
    number: true,
    cell: ({ strands }) => (strands === null ? none : same(String(strands))),
  },
  length,
  mass,
  cycle,
  points,
];

export function stretchTable(tests: readonly StretchTest[]): TestTable {
  return tableOf(tests, stretchColumns);
}

export function torqueTable(tests: readonly TorqueTest[]): TestTable {
  return tableOf(tests, torqueColumns);
}

function tableOf<T extends { readonly file: string }>(
  tests: readonly T[],
  columns: readonly TestColumn<T>[],
): TestTable {
  return {
    columns,
    rows: tests.map((test) => ({ file: test.file, cells: columns.map(({ cell }) => cell(test)) })),
  };
}
