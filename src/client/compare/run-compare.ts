import { choiceQuery, mostCompared, readChoice } from '../../compare/address.ts';
import type { ComparedAircraft } from '../../compare/aircraft.ts';
import { compare as say } from '../../words/compare.ts';
import { aircraftFetcher } from './aircraft-fetcher.ts';
import { aircraftList } from './aircraft-list.ts';
import { comparison } from './comparison.ts';

/** Lets a visitor choose aircraft: the choice stands in the address, the comparison in the page. */
export function runCompare(chooser: HTMLElement, yours: HTMLElement): void {
  const part = <T extends Element>(selector: string): T => {
    const found = chooser.querySelector<T>(selector);
    if (found === null) throw new Error(`The page has no ${selector}.`);
    return found;
  };
  const search = part<HTMLInputElement>('input');
  const select = part<HTMLSelectElement>('select');
  const chosenBox = part<HTMLElement>('.chosen');
  const chosenList = part<HTMLUListElement>('.chosen ul');
  const told = part<HTMLElement>('.told');
  const result = yours.querySelector('.result');
  const examples = document.querySelectorAll<HTMLElement>('.example');
  const list = aircraftList(select);
  const fetchAircraft = aircraftFetcher(chooser.dataset.fetchFrom ?? '');
  const explained = chooser.dataset.explained ?? '';
  const nameOf = (id: string) => list.names.get(id) ?? id;
  let chosen: readonly string[] = [];

  function tell(...sentences: readonly (string | null)[]): void {
    told.textContent = sentences.filter((sentence) => sentence !== null).join(' ');
  }

  function choose(ids: readonly string[]): void {
    history.pushState(null, '', choiceQuery(ids) || location.pathname);
    void show(ids, []);
  }

  function add(): void {
    const id = list.picked();
    if (id === '') return;
    if (chosen.includes(id)) tell(say.already(nameOf(id)));
    else if (chosen.length >= mostCompared) tell(say.full);
    else choose([...chosen, id]);
  }

  function remove(id: string): void {
    const place = chosen.indexOf(id);
    choose(chosen.filter((other) => other !== id));
    const left = chosenList.querySelectorAll('button');
    (left[Math.min(place, left.length - 1)] ?? select).focus();
  }

  function listChosen(): void {
    chosenBox.hidden = chosen.length === 0;
    chosenList.replaceChildren(
      ...chosen.map((id) => {
        const item = document.createElement('li');
        const button = document.createElement('button');
        button.type = 'button';
        button.textContent = say.remove;
        button.setAttribute('aria-label', say.removeNamed(nameOf(id)));
        button.addEventListener('click', () => remove(id));
        item.append(`${nameOf(id)} `, button);
        return item;
      }),
    );
  }

  async function show(ids: readonly string[], remarks: readonly string[]): Promise<void> {
    chosen = ids;
    listChosen();
    const enough = ids.length > 1;
    yours.hidden = !enough;
    for (const example of examples) example.hidden = enough;
    if (!enough) {
      const [only] = ids;
      tell(...remarks, only === undefined ? say.noneChosen : say.oneMore(nameOf(only)));
      return;
    }
    tell(...remarks, say.loading);
    const aircraft: ComparedAircraft[] = [];
    const failed: string[] = [];
    for (const [id, answer] of ids.map((id) => [id, fetchAircraft(id)] as const)) {
      try {
        aircraft.push(await answer);
      } catch {
        failed.push(nameOf(id));
      }
    }
    // Whoever chose again meanwhile is answered by that choice.
    if (chosen !== ids || result === null) return;
    result.innerHTML =
      aircraft.length > 1 ? comparison(aircraft, { prefix: 'yours-', title: say.yours, explained }).text : '';
    yours.hidden = aircraft.length < 2;
    tell(
      ...remarks,
      ...failed.map((name) => say.failed(name)),
      aircraft.length > 1 ? say.compared(aircraft.map(({ name }) => name)) : null,
    );
  }

  /** What the address asks for; nothing is said of an address that asks for nothing. */
  function follow(): void {
    const { chosen: ids, unknown, tooMany } = readChoice(location.search, new Set(list.names.keys()));
    const remarks = [
      ...(unknown.length === 0 ? [] : [say.unknown(unknown)]),
      ...(tooMany ? [say.tooMany] : []),
    ];
    if (ids.length + remarks.length + chosen.length > 0) void show(ids, remarks);
  }

  search.addEventListener('input', () => tell(say.found(list.search(search.value), list.names.size)));
  for (const field of [search, select] as readonly HTMLElement[])
    field.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter') return;
      event.preventDefault();
      add();
    });
  select.addEventListener('dblclick', add);
  part<HTMLButtonElement>('.add').addEventListener('click', add);
  addEventListener('popstate', follow);
  follow();
}
