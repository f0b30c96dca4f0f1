import type { Control } from './control.ts';
import type { Section } from './sections.ts';

/** What of a part of the form is there, whatever is written in it: only where this changes is it drawn anew. */
export function structureOf({ inSight, more }: Section): string {
  return JSON.stringify([...inSight, ...more].map(shape));
}

function shape(control: Control): unknown {
  switch (control.kind) {
    case 'group':
      return [...control.inSight, ...control.folded].map(shape);
    case 'items':
      return ['items', control.isBegun, ...control.items.map(shape)];
    case 'named':
      return ['named', ...control.rows.map(({ path }) => path.at(-1))];
    case 'lines':
      return [control.written.length, control.motors];
    default:
      return control.kind;
  }
}
