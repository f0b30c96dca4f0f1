import { enter as say } from '../../words/enter.ts';
import type { Control } from './control.ts';
import { idOf } from './id-of.ts';
import { itemTitle } from './item-title.ts';
import type { Section } from './sections.ts';

/** The titles of all foldable parts of lists, by the ids of their folds. */
export function titlesOf(sections: readonly Section[]): Map<string, string> {
  const titles = new Map<string, string>();
  const visit = (control: Control): void => {
    if (control.kind === 'group') for (const inner of [...control.inSight, ...control.folded]) visit(inner);
    if (control.kind !== 'items') return;
    const what = say.item[String(control.path.at(-1))] ?? control.field.title;
    control.items.forEach((item, index) => {
      titles.set(idOf(item.path, 'item'), itemTitle(what, item, index));
      visit(item);
    });
  };
  for (const { inSight, more } of sections) for (const control of [...inSight, ...more]) visit(control);
  return titles;
}
