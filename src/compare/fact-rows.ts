import type { ComparedFact, ComparedFacts, Shown } from './aircraft.ts';

/** One line of facts of all aircraft; null where an aircraft does not say. */
export interface FactRow {
  readonly label: string;
  readonly cells: readonly (Shown | null)[];
}

/** A group of facts, parted into what differs and what all say alike. */
export interface FactGroup {
  readonly title: string;
  /** Which aircraft have the group at all. */
  readonly has: readonly boolean[];
  readonly different: readonly FactRow[];
  readonly alike: readonly FactRow[];
}

/** The groups of all aircraft by title, each line by its label, in the order in which they come. */
export function groupFacts(aircraft: readonly { readonly facts: readonly ComparedFacts[] }[]): FactGroup[] {
  const titles = [...new Set(aircraft.flatMap(({ facts }) => facts.map(({ title }) => title)))];
  return titles.map((title) => {
    const found = aircraft.map(({ facts }) => facts.find((group) => group.title === title));
    const groups = found.map((group) => group?.facts ?? []);
    const has = found.map((group) => group !== undefined);
    const labels = [...new Set(groups.flatMap((group) => group.map(({ label }) => label)))];
    const rows = labels.map((label) => ({ label, cells: groups.map((group) => shownAs(group, label)) }));
    const same = ({ cells }: FactRow) => cells.every((cell) => cell?.metric === cells[0]?.metric);
    return { title, has, different: rows.filter((row) => !same(row)), alike: rows.filter(same) };
  });
}

function shownAs(facts: readonly ComparedFact[], label: string): Shown | null {
  return facts.find((fact) => fact.label === label)?.shown ?? null;
}
