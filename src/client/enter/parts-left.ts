import type { Path } from '../../entries/source/source.ts';
import { idOf } from './id-of.ts';

/** The parts of lists in which somebody was, and went on elsewhere. */
export interface PartsLeft {
  /** Whether a path leads into one of them. */
  readonly isLeft: (path: Path) => boolean;
  readonly begin: (part: Path) => void;
  readonly forget: () => void;
}

/** Items of lists, and rows in which something gets a name of its own. */
const anyPart = '.item, .new-name';

/** @param changed is called when a part has been left */
export function partsLeft(form: HTMLElement, changed: () => void): PartsLeft {
  const left = new Set<string>();
  let here: readonly string[] = [];

  form.addEventListener('focusin', ({ target }) => {
    if (!(target instanceof Element)) return;
    const now = partsAround(target);
    const gone = here.filter((part) => !now.includes(part));
    here = now;
    for (const part of gone) left.add(part);
    if (gone.length > 0) changed();
  });

  return {
    isLeft: (path) => path.some((_, at) => left.has(idOf(path.slice(0, at + 1)))),
    begin: (part) => {
      left.delete(idOf(part));
      here = [];
    },
    forget: () => {
      left.clear();
      here = [];
    },
  };
}

function partsAround(element: Element): string[] {
  const parts: string[] = [];
  for (let part = element.closest<HTMLElement>(anyPart); part !== null; ) {
    parts.push(idOf(JSON.parse(part.dataset.at ?? part.dataset.name ?? '[]')));
    part = part.parentElement?.closest<HTMLElement>(anyPart) ?? null;
  }
  return parts;
}
