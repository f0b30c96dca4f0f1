import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { idOf } from './id-of.ts';
import type { PlacedProblem } from './problems-view.ts';

/** The two boxes in which a text is told under a name of the builder's own: places of the form, not of the text. */
export function newNameOf(map: Path): readonly [name: Path, value: Path] {
  return [
    [...map, '-new', '-name'],
    [...map, '-new', '-value'],
  ];
}

/** What stands in the two boxes of a map; null where the page does not show them. */
export function newName(map: Path): {
  readonly name: HTMLInputElement;
  readonly value: HTMLInputElement;
} | null {
  const [name, value] = newNameOf(map).map((path) => document.getElementById(idOf(path)));
  return name instanceof HTMLInputElement && value instanceof HTMLInputElement ? { name, value } : null;
}

/** Rows in which one of the two is filled in, and nobody is about to fill in the other: they are not in the file. */
export function halfNamed(form: HTMLElement): PlacedProblem[] {
  return [...form.querySelectorAll<HTMLElement>('.new-name')].flatMap((row): PlacedProblem[] => {
    const map: Path = JSON.parse(row.dataset.name ?? '[]');
    const boxes = newName(map);
    if (boxes === null || row.contains(document.activeElement)) return [];
    const [hasName, hasValue] = [boxes.name.value.trim() !== '', boxes.value.value.trim() !== ''];
    if (hasName === hasValue) return [];
    const sentence = hasName ? say.valueToo(boxes.name.value.trim()) : say.nameToo(boxes.value.value.trim());
    return [
      {
        problem: { code: 'half-named', severity: 'error', line: 1 },
        path: newNameOf(map)[hasName ? 1 : 0],
        isGap: false,
        title: '',
        atField: sentence,
        alone: sentence,
        offer: null,
      },
    ];
  });
}
