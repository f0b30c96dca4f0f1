import { describeFields } from '../../entries/describe/describe-shape.ts';
import type { Field } from '../../entries/describe/field.ts';
import { entry } from '../../entries/schema/entry.ts';
import type { Plain } from '../../entries/source/source.ts';
import type { Control } from './control.ts';
import { type Begun, controlsOf } from './controls-of.ts';
import { isInSight } from './in-sight.ts';
import { motorsOf } from './per-motor.ts';

/** The parts of the form in the order in which one measures, flies and tells, each with the keys it asks for. */
export const sections = [
  { id: 'wing', keys: ['wing'], folded: false },
  { id: 'tail', keys: ['tailplane', 'fin'], folded: false },
  { id: 'mass', keys: ['mass', 'balance', 'nose'], folded: false },
  { id: 'motors', keys: ['motors'], folded: false },
  { id: 'flights', keys: ['flights'], folded: false },
  { id: 'built', keys: ['structure', 'trim'], folded: true },
  { id: 'glides', keys: ['glides'], folded: true },
  { id: 'setups', keys: ['setups'], folded: true },
  { id: 'photos', keys: ['photos'], folded: true },
] as const;

/** The part that asks for every key that no other does. */
const first = 'aircraft';

export type SectionId = (typeof sections)[number]['id'] | typeof first;

/** One part of the form with its fields. */
export interface Section {
  readonly id: SectionId;
  readonly inSight: readonly Control[];
  /** Behind a fold within the part. */
  readonly more: readonly Control[];
  /** Whether the whole part is folded. */
  readonly folded: boolean;
}

const fields: readonly Field[] = describeFields(entry);

/** The whole form for the fields of an entry as they are written. */
export function formOf(written: Plain, begun: Begun): Section[] {
  const controls = controlsOf(fields, written, { begun, motors: motorsOf(written) });
  const taken = new Set<string>(sections.flatMap(({ keys }) => keys));
  const others = controls.filter(({ path }) => !taken.has(String(path[0])));
  return [
    { id: first, ...parted(others), folded: false },
    ...sections.map(({ id, keys, folded }) => ({
      id,
      inSight: keys.flatMap((key) => controls.filter(({ path }) => path[0] === key)),
      more: [],
      folded,
    })),
  ];
}

function parted(controls: readonly Control[]) {
  const shown = ({ path, field }: Control) => isInSight(path, field.required);
  return {
    inSight: controls.filter(shown),
    more: controls.filter((control) => !shown(control)),
  };
}
