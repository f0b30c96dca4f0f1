import type { Problem } from '../../entries/problems/problem.ts';
import { entry } from '../../entries/schema/entry.ts';
import { describedAt, keysAt } from '../../entries/schema/field-at.ts';
import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { html } from '../compare/html.ts';
import type { Checked } from './checked.ts';
import { idOf } from './id-of.ts';
import { pathOfProblem } from './path-of-problem.ts';

/** A problem with the field it is told at. */
export interface PlacedProblem {
  readonly problem: Problem;
  readonly path: Path;
  /** Whether something is still to be filled in, which nobody has done wrong yet. */
  readonly isGap: boolean;
}

/** Codes of what is not there yet. */
const gaps: ReadonlySet<string> = new Set([
  'missing-field',
  'empty-field',
  'mass-missing',
  'skein-incomplete',
]);

const order = keysAt(entry, []);

/** Every problem of a text with its field, what is missing first, in the order of the fields; a text that cannot be read has none. */
export function placedProblems({ source, problems }: Checked): PlacedProblem[] {
  const placed = problems.map((problem) => ({
    problem,
    path: source === null ? [] : pathOfProblem(source, problem),
    isGap: gaps.has(problem.code),
  }));
  const place = ({ path, isGap }: PlacedProblem) => (isGap ? order.indexOf(String(path[0])) : order.length);
  return placed.sort((a, b) => place(a) - place(b));
}

/**
 * Tells each problem at its field, or at the nearest part around it that is on the page, and how many there are in what is
 * folded. Of what is only missing nothing is said before somebody asks.
 */
export function tellProblems(form: ParentNode, placed: readonly PlacedProblem[], tellGaps: boolean): void {
  for (const box of form.querySelectorAll('.problems')) if (box.innerHTML !== '') box.innerHTML = '';
  for (const field of form.querySelectorAll('[aria-invalid]')) field.removeAttribute('aria-invalid');
  for (const mark of form.querySelectorAll('.to-mend')) mark.textContent = '';
  const byBox = new Map<Element, PlacedProblem[]>();
  for (const one of placed.filter(({ isGap }) => tellGaps || !isGap)) {
    const box = nearest(one.path, (id) => document.getElementById(id));
    if (box === null) continue;
    byBox.set(box, [...(byBox.get(box) ?? []), one]);
    const field = document.getElementById(idOf(one.path));
    if (one.problem.severity === 'error') field?.setAttribute('aria-invalid', 'true');
    for (const head of foldsAround(box, one.path)) count(head);
  }
  for (const [box, list] of byBox)
    box.innerHTML =
      html`${list.map(({ problem }) => html`<p class="problem ${problem.severity}">${problem.message}</p>`)}`.text;
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

function count(fold: HTMLDetailsElement): void {
  const mark = fold.querySelector<HTMLElement>(':scope > summary .to-mend');
  if (mark === null) return;
  const known = Number.parseInt(mark.textContent ?? '', 10) || 0;
  mark.textContent = say.toMendInside(known + 1);
}

/** All that is to be mended, each leading to its field; what is missing by its name. */
export function problemList(placed: readonly PlacedProblem[]): string {
  return html`${placed.map(({ problem, path, isGap }, index) => {
    const leads = html`<button type="button" id="to-${index}" data-to="${JSON.stringify(path)}" data-line="${problem.line}">${isGap ? gapName(problem, path) : problem.message}</button>`;
    return isGap
      ? html`<li class="gap ${problem.severity}">${leads}</li>`
      : html`<li class="${problem.severity}">${leads} <span class="aside">${say.inText(problem.line)}</span></li>`;
  })}`.text;
}

function gapName(problem: Problem, path: Path): string {
  const title = describedAt(entry, path)?.title;
  if (title === undefined) return problem.message;
  const item = path.findLastIndex((step) => typeof step === 'number');
  const what = say.item[String(path[item - 1])];
  return item < 0 || what === undefined
    ? title
    : say.ofItem(title, say.itemNumber(what, Number(path[item]) + 1).toLowerCase());
}
