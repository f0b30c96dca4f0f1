import { enter as say } from '../../words/enter.ts';
import type { Checked } from './checked.ts';
import type { FormView } from './form-view.ts';
import { idOf } from './id-of.ts';
import { type PlacedProblem, placedProblems, problemList, tellProblems } from './problems-view.ts';

/** What is to be mended: told at the fields, counted and listed beside them, and led to one after another. */
export interface MendView {
  /** Gives how many mistakes and gaps there are. */
  readonly show: (now: Checked) => number;
  /** Tells what was shown last again, in fields that were drawn anew. */
  readonly again: () => void;
  /** Leads to a field; from then on gaps are told at their fields, too. */
  readonly leadTo: (path: readonly (string | number)[], line: number) => void;
  /** Leads to the next mistake or gap; false where there is none. */
  readonly leadToNext: () => boolean;
  /** As at the start: gaps are not told before somebody asks. */
  readonly reset: () => void;
}

export function mendView(form: HTMLElement, textField: HTMLTextAreaElement, view: FormView): MendView {
  let placed: readonly PlacedProblem[] = [];
  let canBeRead = true;
  let tellGaps = false;
  let lastMended = '';

  function write(selector: string, text: string): void {
    const place = form.querySelector(selector);
    if (place !== null && place.textContent !== text) place.textContent = text;
  }

  function again(): void {
    tellProblems(form, canBeRead ? placed : [], tellGaps);
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
      placed = placedProblems(now);
      canBeRead = now.source !== null;
      again();
      const errors = placed.filter(({ problem }) => problem.severity === 'error');
      const gaps = errors.filter(({ isGap }) => isGap).length;
      write('.mend-count', say.left(errors.length - gaps, gaps, placed.length - errors.length));
      write('.bar-mend', say.barLeft(errors.length));
      const list = form.querySelector('.mend-list');
      const markup = problemList(placed);
      if (list !== null && list.innerHTML !== markup) list.innerHTML = markup;
      return errors.length;
    },
    again,
    leadTo,
    leadToNext: () => {
      const errors = placed.filter(({ problem }) => problem.severity === 'error');
      const last = errors.findIndex(({ path }) => idOf(path) === lastMended);
      const next = errors[last + 1] ?? errors[0];
      if (next === undefined) return false;
      lastMended = idOf(next.path);
      leadTo(next.path, next.problem.line);
      return true;
    },
    reset: () => {
      tellGaps = false;
      lastMended = '';
    },
  };
}
