import type { ComparedAircraft } from '../../compare/aircraft.ts';
import { withNamesToldApart } from '../../compare/names-told-apart.ts';
import { compare as say } from '../../words/compare.ts';
import { drawnTogether, isDrawn } from './drawn-together.ts';
import { figureTables } from './figure-tables.ts';
import { type Html, html } from './html.ts';
import type { Place } from './parts.ts';
import { whyLonger } from './why-longer.ts';
import { writtenTables } from './written-tables.ts';

/** The lines by which styles/drawing.css tells drawings that lie over each other apart. */
const lineNames = ['first', 'second', 'third', 'fourth'];

/** Two to four aircraft side by side, differences first. Build and browser make it alike. */
export function comparison(compared: readonly ComparedAircraft[], on: Place): Html {
  const aircraft = withNamesToldApart(compared);
  const challenges = new Set(aircraft.map(({ challenge }) => challenge.id));
  return html`<div class="comparison">${heads(aircraft)}${
    challenges.size > 1 ? html`<p class="notice">${say.otherRules}</p>` : null
  }${drawnTogether(aircraft, on.prefix)}${whyLonger(aircraft, on)}${figureTables(aircraft, on)}${writtenTables(aircraft, on)}</div>`;
}

function heads(aircraft: readonly ComparedAircraft[]): Html {
  const drawn = aircraft.filter(isDrawn);
  const items = aircraft.map((one) => {
    const { name, builders, challenge, address, result, figuresOf } = one;
    const line = lineNames[drawn.findIndex(({ id }) => id === one.id)];
    return html`<li>${
      line === undefined
        ? null
        : html`<svg class="swatch" viewBox="0 0 48 8" aria-hidden="true"><path class="overlaid ${line}" d="M0 4h48"/></svg>`
    }<a class="name" href="${address}">${name}</a> <span class="aside">${say.builtBy} ${builders}</span> <span class="aside">${challenge.title}: ${result}</span> <span class="aside">${figuresOf}</span></li>`;
  });
  return html`<ul class="heads" aria-label="${say.aircraft}">${items}</ul>`;
}
