import type { ComparedAircraft } from '../../compare/aircraft.ts';
import { drawOverlay, type Overlaid } from '../../drawings/draw-overlay.ts';
import { narrow, wide } from '../../drawings/paper.ts';
import { compare as say } from '../../words/compare.ts';
import { drawing } from '../../words/drawing.ts';
import { Html, html } from './html.ts';

type Drawn = ComparedAircraft & Overlaid;

/** True of an aircraft of which enough is known to draw it. */
export function isDrawn(aircraft: ComparedAircraft): aircraft is Drawn {
  return aircraft.shape !== null && aircraft.span !== null;
}

/** All aircraft from above, laid over each other to one scale, on paper for a wide column and for a narrow one. */
export function drawnTogether(aircraft: readonly ComparedAircraft[], prefix: string): Html {
  const drawn = aircraft.filter(isDrawn);
  const missing = aircraft.filter((one) => !isDrawn(one));
  if (drawn.length === 0) return html`<h3>${say.drawn}</h3><p>${say.noDrawing}</p>`;
  const names = {
    id: `${prefix}drawn`,
    title: drawing.overlayTitle(drawn.map(({ name }) => name)),
    description: drawing.overlayDescription(drawn.map(({ name, span }) => `${name} ${span.metric}`)),
  };
  const sheets = [wide, narrow].map((paper) => new Html(drawOverlay(drawn, paper, names)));
  return html`<h3>${say.drawn}</h3><figure class="plan">${sheets}<figcaption>${drawing.overlayAligned}${
    missing.length === 0 ? null : ` ${say.notDrawn(missing.map(({ name }) => name))}`
  }</figcaption></figure>`;
}
