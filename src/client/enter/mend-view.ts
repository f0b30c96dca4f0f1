import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import type { Checked } from './checked.ts';
import type { FormView } from './form-view.ts';
import { idOf } from './id-of.ts';
import { halfNamed } from './new-name.ts';
import { partsLeft } from './parts-left.ts';
import { type PlacedProblem, placedProblems, problemList, tallied, tellProblems } from './problems-view.ts';

/** What is to be mended: told at the fields, counted and listed beside them, and led to one after another. */
export interface MendView {
  /** Gives how many mistakes and gaps there are. */
  readonly show: (now: Checked) => number;
  /** Tells what was shown last again, in fields that were drawn anew. */
  readonly again: () => void;
  /** Leads to a field; from then on gaps are told at their fields, too. */
  readonly leadTo: (path: readonly (string | number)[], line: number) => void;
  /** Leads to the next mistake or gap, else to the next doubt; false where there is none. */
  readonly leadToNext: () => boolean;
  /** A part has just been added: of what it lacks nothing is said before it is left. */
  readonly begin: (part: Path) => void;
  /** As at the start: gaps are not told before somebody asks. */
  readonly reset: () => void;
}

export function mendView(form: HTMLElement, textField: HTMLTextAreaElement, view: FormView): MendView {
  let inText: readonly PlacedProblem[] = [];
  let placed: readonly PlacedProblem[] = [];
  let canBeRead = true;
  let tellGaps = false;
  let lastMended = '';
  const parts = partsLeft(form, again);

  function write(selector: string, text: string): void {
    const place = form.querySelector(selector);
    if (place !== null && place.textContent !== text) place.textContent = text;
  }

  function again(): void {
    placed = [...inText, ...halfNamed(form)];
    tellProblems(form, canBeRead ? placed : [], (gap) => tellGaps || parts.isLeft(gap));
    const { mistakes, gaps, doubts } = tallied(placed);
    write('.mend-count', say.left(mistakes, gaps, doubts));
    write('.bar-mend', say.barLeft(mistakes, gaps, doubts));
    const list = form.querySelector('.mend-list');
    const markup = problemList(placed);
    if (list !== null && list.innerHTML !== markup) list.innerHTML = markup;
  }

  function leadTo(path: readonly (string | number)[], line: number): void {
    tellGaps = true;
    if (canBeRead && path.length > 0) view.reveal(path);
    else {
      const start = textField.value.split('\n', line - 1).reduce((sum, one) => sum + one.length + 1, 0);
      textField.focus({ preventScroll: true });
      textField.setSelectionRange(start, start);
      textField.scrollIntoView({ block: 'center' });
    }
    again();
  }

  return {
    show: (now) => {
      inText = placedProblems(now);
      canBeRead = now.source !== null;
      again();
      const { mistakes, gaps } = tallied(placed);
      return mistakes + gaps;
    },
    again,
    begin: parts.begin,
    leadTo,
    leadToNext: () => {
      const errors = placed.filter(({ problem }) => problem.severity === 'error');
      if (errors.length === 0) errors.push(...placed);
      const last = errors.findIndex(({ path }) => idOf(path) === lastMended);
      const next = errors[last + 1] ?? errors[0];
      if (next === undefined) return false;
      lastMended = idOf(next.path);
      leadTo(next.path, next.problem.line);
      return true;
    },
    reset: () => {
      tellGaps = false;
      parts.forget();
      lastMended = '';
    },
  };
}
