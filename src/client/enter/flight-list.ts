import type { FlightWithFigures } from '../../entries/check-judged/with-figures.ts';
import type { Challenge } from '../../model/challenge.ts';
import { formatSeconds } from '../../quantities/format.ts';
import { enter as say } from '../../words/enter.ts';
import { status as statusWords } from '../../words/vocabulary.ts';
import { type Html, html } from '../compare/html.ts';

/** Each flight with its official time and how that came about, and whether the rules let it count; nothing without flights. */
export function flightList(flights: readonly FlightWithFigures[], { timing }: Challenge): Html {
  if (flights.length === 0) return html``;
  const rows = flights.map(({ flight, judged: { official, status, reason } }) => {
    const canCount = status === 'provisional';
    const verdict = canCount ? say.canCount : statusWords[status];
    const time = formatSeconds(official.seconds, timing.resolution);
    return html`<li class="${canCount ? 'met' : 'not-met'}"><span>${say.flightTime(flight.number, time)}</span> <strong>${verdict}</strong><span class="aside">${reason ?? official.explanation}</span></li>`;
  });
  return html`<h3>${say.sections.flights}</h3><ul class="limits">${rows}</ul><p class="aside">${say.notRuledYet}</p>`;
}
