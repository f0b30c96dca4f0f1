import type { EntryRecord } from '../almanac/almanac.ts';
import { isPresent, type PresentFigure } from '../figures/figure.ts';
import type { Design } from '../model/design.ts';
import { words } from '../words.ts';
import { measureOfFigure } from './measure.ts';
import { airframeFacts, builtFacts, type FactRow, motorFacts } from './measured-facts.ts';
import { figureName } from './rule-sentences.ts';

/** What a setup made of one value; null on the side where there is none. */
export interface SetupChange {
  readonly label: string;
  readonly before: FactRow | null;
  readonly after: FactRow | null;
}

/**
 * Everything a builder wrote that differs between two setups, in the order of the page. It compares what the builder
 * wrote, also where an official's value stands instead, so that nothing written is lost.
 */
export function changesBetween(before: Design, after: Design): SetupChange[] {
  return changes(writtenFacts(before), writtenFacts(after));
}

/** Figures of the model of which a setup may make something, in the order of the page. */
const comparedFigures = [
  'wing-area',
  'airframe-mass',
  'rubber-mass',
  'flying-mass',
  'wing-loading',
  'tail-volume',
  'decalage',
  'balance-point',
  'static-margin',
];

/** The figures that came out otherwise than in the setup before. */
export function figureChanges(record: EntryRecord, setup: number): SetupChange[] {
  const [before, after] = [record.setupFigures[setup - 1], record.setupFigures[setup]];
  const rowsOf = (figures: typeof before): Map<string, FactRow> =>
    new Map(
      comparedFigures.flatMap((id): [string, FactRow][] => {
        const figure = figures?.entry.get(id);
        return isPresent(figure) ? [[id, figureRow(figure)]] : [];
      }),
    );
  return changes(rowsOf(before), rowsOf(after));
}

function figureRow(figure: PresentFigure): FactRow {
  return { label: figureName(figure.id), measures: [measureOfFigure(figure)], inspected: false };
}

function changes(before: ReadonlyMap<string, FactRow>, after: ReadonlyMap<string, FactRow>): SetupChange[] {
  return inBothOrders([...before.keys()], [...after.keys()]).flatMap((key) => {
    const [old, now] = [before.get(key) ?? null, after.get(key) ?? null];
    const label = (now ?? old)?.label ?? key;
    return JSON.stringify(old) === JSON.stringify(now) ? [] : [{ label, before: old, after: now }];
  });
}

/** The keys of both lists; one that only the second has stands before the shared key that follows it there. */
function inBothOrders(first: readonly string[], second: readonly string[]): string[] {
  const keys = [...first];
  for (const [index, key] of [...second.entries()].toReversed()) {
    const next = second[index + 1];
    if (!keys.includes(key)) keys.splice(next === undefined ? keys.length : keys.indexOf(next), 0, key);
  }
  return keys;
}

/** All facts of a design by a name of their own, as the builder wrote them. */
function writtenFacts(design: Design): Map<string, FactRow> {
  const own = { ...design, inspected: null };
  const several = design.motors.length > 1;
  const rows = [
    ...airframeFacts(own).flatMap((group) =>
      group.rows.map((row) => [`${group.id} ${row.label}`, row] as const),
    ),
    ...builtFacts(own).map((row) => [`built ${row.label}`, row] as const),
    ...design.motors.flatMap((motor, index) => {
      const count: FactRow = { label: words.facts.motorCount, text: String(motor.count) };
      return [count, ...motorFacts(motor)].map((row): readonly [string, FactRow] => [
        `motor ${index} ${row.label}`,
        several ? { ...row, label: words.facts.ofMotor(index + 1, row.label) } : row,
      ]);
    }),
  ];
  return new Map(rows);
}
