import { kindOf, nameOfFigure } from '../contest/rules/name-of-figure.ts';
import type { PresentFigure, Term } from '../figures/figure.ts';
import { toText } from '../figures/formula.ts';
import { substituted } from '../figures/substituted.ts';
import { kindOfUnit } from '../figures/unit-kind.ts';
import { toUnit } from '../quantities/format.ts';
import type { Kind } from '../quantities/quantity.ts';
import { words } from '../words.ts';
import { printed, withUnit } from './number-text.ts';
import { unitsOfFigure } from './units-shown.ts';

/** So many digits of a value that stands in a list of what was read. */
const digits = 4;

/**
 * How a figure came about with its numbers: put into its formula, such as "612 g + 31 g = 643 g", else a list of what it was
 * worked out from, each once, without the assumptions; empty where it was worked out from nothing.
 */
export function workedText(figure: PresentFigure): string {
  const line = substituted(figure);
  if (line !== null) return toText(line);
  const named = new Map<string, string[]>();
  for (const term of figure.worked) {
    if (isUntold(term)) continue;
    const { name, value } = listed(term, figure);
    named.set(name, [...(named.get(name) ?? []), value]);
  }
  if (named.size === 0) return '';
  return words.entry.workedFrom([...named].map(([name, values]) => ({ name, values: [...new Set(values)] })));
}

/**
 * An assumption is told in words of its own; a number around 0 or 1 that carries the scatter of tests or the calibration of a
 * rig says nothing as a value; of one thing nobody counts.
 */
function isUntold(term: Term): boolean {
  if (term.from === 'count') return term.value === 1;
  if (term.from === 'figure') return false;
  const { kind, value, origin } = term.quantity;
  if (origin === 'assumed' || origin === 'exact') return true;
  return (kind === 'number' || origin === 'logged') && (value === 0 || value === 1);
}

function listed(term: Term, { id, unit }: PresentFigure): { readonly name: string; readonly value: string } {
  if (term.from === 'count') return { name: words.entry.counted[term.name], value: String(term.value) };
  if (term.from === 'input') {
    const { kind, value } = term.quantity;
    return { name: term.name, value: inItsUnit(kind === kindOfUnit(unit) ? id : '', kind, value) };
  }
  return { name: nameOfFigure(term.id), value: inItsUnit(term.id, kindOf(term), term.value) };
}

function inItsUnit(id: string, kind: Kind, value: number): string {
  const { metric } = unitsOfFigure(id, kind);
  // A field's elevation is no matter of millimetres.
  const unit = metric === 'mm' && Math.abs(value) >= 1 ? 'm' : metric;
  const number = toUnit(value, kind, unit);
  const rounded = Math.abs(number) >= 10 ** digits ? Math.round(number) : Number(number.toPrecision(digits));
  return withUnit(String(rounded + 0).replace('-', '−'), printed(unit));
}
