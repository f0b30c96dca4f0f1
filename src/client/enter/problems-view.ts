import type { Problem } from '../../entries/problems/problem.ts';
import { entry } from '../../entries/schema/entry.ts';
import { keysAt } from '../../entries/schema/field-at.ts';
import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { type Html, html } from '../compare/html.ts';
import type { Checked } from './checked.ts';
import { idOf } from './id-of.ts';
import { pathOfProblem } from './path-of-problem.ts';
import { isGapOf, placeInForm } from './place-in-form.ts';
import { titleAt } from './title-at.ts';
import { type ToldInForm, toldInForm } from './told-in-form.ts';

/** A problem with the field it is told at. */
export interface PlacedProblem extends ToldInForm {
  readonly problem: Pick<Problem, 'code' | 'severity' | 'line'>;
  readonly path: Path;
  /** Whether something is still to be filled in, which nobody has done wrong yet. */
  readonly isGap: boolean;
  /** What the field is called. */
  readonly title: string;
}

const order = keysAt(entry, []);

/** Every problem of a text with its field, what is missing first, in the order of the fields; a text that cannot be read has none. */
export function placedProblems({ source, plain, problems }: Checked): PlacedProblem[] {
  const placed = problems.map((problem): PlacedProblem => {
    const isGap = isGapOf(problem);
    if (source === null || plain === null) {
      const sentence = problem.message;
      return { problem, path: [], isGap, title: '', atField: sentence, alone: sentence, offer: null };
    }
    const inText = pathOfProblem(source, problem);
    const path = placeInForm(plain, inText, problem.code);
    const title = titleAt(plain, path);
    return { problem, path, isGap, title, ...toldInForm(source, plain, problem, inText, path) };
  });
  const place = ({ path, isGap }: PlacedProblem) => (isGap ? order.indexOf(String(path[0])) : order.length);
  return placed.sort((a, b) => place(a) - place(b));
}

/** How many of them are mistakes, gaps and doubts. */
export function tallied(placed: readonly PlacedProblem[]) {
  const errors = placed.filter(({ problem }) => problem.severity === 'error');
  const gaps = errors.filter(({ isGap }) => isGap).length;
  return { mistakes: errors.length - gaps, gaps, doubts: placed.length - errors.length };
}

/**
 * Tells each problem at its field, or at the nearest part around it that is on the page, and how many there are in what is
 * folded. What is only missing is told where somebody asked for it, or left its part.
 */
export function tellProblems(
  form: ParentNode,
  placed: readonly PlacedProblem[],
  isTold: (gap: Path) => boolean,
): void {
  const sentences = new Map<Element, Html[]>();
  const folded = new Map<HTMLDetailsElement, PlacedProblem[]>();
  for (const field of form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
  for (const one of placed) {
    const box = nearest(one.path, (id) => document.getElementById(id));
    if (box === null) continue;
    for (const fold of foldsAround(box, one.path)) folded.set(fold, [...(folded.get(fold) ?? []), one]);
    if (one.isGap && !isTold(one.path)) continue;
    sentences.set(box, [...(sentences.get(box) ?? []), sentence(one, box.id === idOf(one.path, 'problems'))]);
    if (one.problem.severity === 'error')
      document.getElementById(idOf(one.path))?.setAttribute('aria-invalid', 'true');
  }
  for (const box of form.querySelectorAll('.problems')) {
    const markup = html`${sentences.get(box) ?? []}`.text;
    if (box.innerHTML !== markup) box.innerHTML = markup;
  }
  for (const mark of form.querySelectorAll('.to-mend')) {
    const fold = mark.closest('details');
    const { mistakes, gaps, doubts } = tallied(fold === null ? [] : (folded.get(fold) ?? []));
    const text = say.counts(mistakes, gaps, doubts);
    if (mark.textContent !== text) mark.textContent = text;
  }
}

function sentence({ problem, atField, alone, offer }: PlacedProblem, isAtField: boolean): Html {
  const button =
    offer === null
      ? html``
      : html` <button type="button" class="offer" data-write="${JSON.stringify(offer.path)}" data-value="${JSON.stringify(offer.value)}">${say.write(offer.text)}</button>`;
  return html`<p class="problem ${problem.severity}">${isAtField ? atField : alone}${button}</p>`;
}

/** The room for problems of the innermost part on the page that holds a path. */
function nearest(path: Path, find: (id: string) => Element | null): Element | null {
  for (let length = path.length; length > 0; length -= 1) {
    const box = find(idOf(path.slice(0, length), 'problems'));
    if (box !== null) return box;
  }
  return null;
}

/** The heads of the folds that hide a problem: those around its room, and one that has not been written out. */
function foldsAround(box: Element, path: Path): HTMLDetailsElement[] {
  const folds: HTMLDetailsElement[] = [];
  for (
    let fold = box.closest('details');
    fold !== null;
    fold = fold.parentElement?.closest('details') ?? null
  )
    folds.push(fold);
  const inside = [...(box.parentElement?.querySelectorAll<HTMLDetailsElement>(':scope > details') ?? [])];
  const holding = inside.find(({ dataset }) =>
    (JSON.parse(dataset.holds ?? '[]') as Path[]).some((held) => held.every((step, at) => path[at] === step)),
  );
  return holding === undefined || folds.includes(holding) ? folds : [holding, ...folds];
}

/** All that is to be mended, each leading to its field; what is missing by its name. */
export function problemList(placed: readonly PlacedProblem[]): string {
  return html`${placed.map(({ problem, path, isGap, title, alone }, index) => {
    const leads = html`<button type="button" id="to-${index}" data-to="${JSON.stringify(path)}" data-line="${problem.line}">${isGap && title !== '' ? title : alone}</button>`;
    return isGap
      ? html`<li class="gap ${problem.severity}">${leads}</li>`
      : html`<li class="${problem.severity}">${leads} <span class="aside">${say.inText(problem.line)}</span></li>`;
  })}`.text;
}
