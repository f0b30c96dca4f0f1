import type { Measured, Shown } from '../../compare/aircraft.ts';
import { formatMeasured } from '../../quantities/format.ts';
import { frame } from '../../words/frame.ts';
import { type Html, html } from './html.ts';

// What the site's components Both and Ledger write, for markup that a browser makes, too.

/** One text in both systems of units. */
export function both({ metric, imperial }: Shown): Html {
  return metric === imperial
    ? html`${metric}`
    : html`<span class="metric">${metric}</span><span class="imperial">${imperial}</span>`;
}

/** The part of a page on which a comparison stands. */
export interface Place {
  /** Makes ids unique on the page. */
  readonly prefix: string;
  /** What the part is called: makes the names of its tables unique. */
  readonly title: string;
  /** Address of the page that explains figures. */
  readonly explained: string;
}

/** A table that scrolls where it must. */
export function ledger(on: Place, name: string, kind: string, head: Html, rows: readonly Html[]): Html {
  return html`<div class="scroll" role="region" aria-label="${frame.scrollable(`${on.title}: ${name}`)}" tabindex="0"><table class="ledger ${kind}"><thead>${head}</thead><tbody>${rows}</tbody></table></div>`;
}

/** A pure number with its ±. */
export function plainNumber({ value, u }: Measured): string {
  const text = formatMeasured(value, u, 'number', '1');
  const signed = text.value.replace('-', '\u2212');
  return text.u === '' ? signed : `${signed} ± ${text.u}`;
}

/** A factor as a sentence tells it: three digits, without its ±. */
export function toldFactor(factor: number): string {
  return String(Number(factor.toPrecision(3)));
}
