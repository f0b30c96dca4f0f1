import { foldedLetters } from '../board/folded-letters.ts';

/** The list to pick from, which a search shortens. */
export interface AircraftList {
  /** Names by id. */
  readonly names: ReadonlyMap<string, string>;
  /** Shows what has every word of the search; gives how many that are. Picks the first where the pick is not among them. */
  readonly search: (text: string) => number;
  /** The id picked; empty where none is. */
  readonly picked: () => string;
}

interface Group {
  readonly group: HTMLOptGroupElement;
  readonly options: readonly { readonly option: HTMLOptionElement; readonly folded: string }[];
}

/** Takes the list of a page over: its options are taken out and put back, since not every browser hides one. */
export function aircraftList(select: HTMLSelectElement): AircraftList {
  const groups: readonly Group[] = [...select.querySelectorAll('optgroup')].map((group) => ({
    group,
    options: [...group.querySelectorAll('option')].map((option) => ({
      option,
      folded: foldedLetters(option.textContent ?? ''),
    })),
  }));
  return {
    names: new Map([...select.options].map((option) => [option.value, option.dataset.name ?? option.text])),
    picked: () => select.value,
    search(text) {
      const wanted = foldedLetters(text)
        .split(/\s+/)
        .filter((word) => word !== '');
      for (const { group, options } of groups)
        group.replaceChildren(
          ...options
            .filter(({ folded }) => wanted.every((word) => folded.includes(word)))
            .map(({ option }) => option),
        );
      select.replaceChildren(
        ...groups.map(({ group }) => group).filter(({ children }) => children.length > 0),
      );
      if (select.selectedIndex < 0 && wanted.length > 0) select.selectedIndex = 0;
      return select.options.length;
    },
  };
}
