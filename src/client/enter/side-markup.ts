import { measureOfFigure } from '../../components/measure.ts';
import { planLabels } from '../../components/plan-labels.ts';
import { unmet } from '../../contest/rules/condition.ts';
import { isJunior } from '../../contest/rules/junior-team.ts';
import { drawPlan } from '../../drawings/draw-plan.ts';
import { narrow } from '../../drawings/paper.ts';
import { planShape } from '../../drawings/plan-shape.ts';
import { seenFromBehind } from '../../drawings/view-from-behind.ts';
import { crossCheck } from '../../entries/check-judged/cross-checks.ts';
import type { Problem } from '../../entries/problems/problem.ts';
import type { SourceDocument } from '../../entries/source/source.ts';
import { type FigureSet, isPresent } from '../../figures/figure.ts';
import { figureDefinition } from '../../figures/registry.ts';
import type { CalendarDate } from '../../model/calendar.ts';
import type { Entry, Setup } from '../../model/entry.ts';
import { drawing as sayDrawing } from '../../words/drawing.ts';
import { enter as say } from '../../words/enter.ts';
import { Html, html } from '../compare/html.ts';
import { both } from '../compare/parts.ts';
import { flightList } from './flight-list.ts';
import { judgedAlone } from './judged-alone.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';

/** The figures that tell first what an aircraft is like. */
const shown = [
  'span',
  'wing-area',
  'aspect-ratio',
  'flying-mass',
  'wing-loading',
  'tail-volume',
  'static-margin',
  'rubber-mass',
  'rubber-share',
  'stored-energy',
  'sink-speed',
  'predicted-time',
] as const;

/** What an entry comes to. */
export interface Side {
  /** It drawn to scale, held against the rules of its challenge, and its first figures. A sketch says that it is one. */
  readonly markup: string;
  /** What `check` finds where figures and verdicts meet what is written; nothing of a sketch. */
  readonly problems: readonly Problem[];
}

/** @param today the day on which it is written, where the visitor is; nobody flies later than that */
export function sideOf(
  entry: Entry,
  source: SourceDocument | null,
  site: EnterSite,
  challenge: EnterChallenge | null,
  today: CalendarDate,
): Side {
  const isSketch = source === null;
  const record = judgedAlone(entry, challenge?.rules ?? null, site.batches);
  const setup = entry.setups.at(-1) ?? entry.setups[0];
  const figures = record.setupFigures.at(-1);
  if (figures === undefined) return { markup: '', problems: [] };
  const parts = [
    isSketch ? html`<p class="aside">${say.sketch}</p>` : html``,
    plan(entry.name, setup, figures),
    challenge === null ? html`` : flightList(record.flights, challenge.rules),
    challenge === null ? html`` : limits(entry, isSketch, setup, figures, challenge),
    figureList(setup, figures),
  ];
  const problems =
    source === null || challenge === null
      ? []
      : crossCheck({
          record,
          source,
          rulings: null,
          challenge: challenge.rules,
          state: challenge.state,
          today,
        });
  return { markup: html`${parts}`.text, problems };
}

function plan(name: string, { design }: Setup, figures: FigureSet): Html {
  const shape = planShape(design, figures);
  if (shape === null) return html`<p class="aside">${sayDrawing.none}</p>`;
  const labels = planLabels(design, figures);
  const { metric, imperial } = labels.span;
  const svg = drawPlan(
    shape,
    narrow,
    {
      id: 'plan-drawing',
      title: sayDrawing.title(name),
      description: sayDrawing.description(shape, `${metric} (${imperial})`, seenFromBehind(shape)),
    },
    labels,
  );
  const taken =
    shape.notes.length === 0
      ? html``
      : html`<details class="taken" id="taken"><summary id="taken-head">${sayDrawing.assumed(shape.notes.length)}</summary><ul>${shape.notes.map((note) => html`<li>${sayDrawing.notes[note]}</li>`)}</ul></details>`;
  return html`<figure class="plan">${new Html(svg)}<figcaption>${taken}</figcaption></figure>`;
}

/** Each condition of the challenge with whether the latest setup meets it; why not, in the words of the verdicts. */
function limits(
  entry: Entry,
  isSketch: boolean,
  { design }: Setup,
  figures: FigureSet,
  challenge: EnterChallenge,
): Html {
  const junior = isJunior(entry);
  const rows = challenge.rules.eligibility.map((condition, index) => {
    const reason = unmet(condition, { design, junior, figures }, false);
    // What a sketch says of control or builder may only stand in for them.
    const unknown = (isSketch && condition.kind === 'fact') || reason?.includes('cannot be checked') === true;
    const verdict = unknown ? say.limitUnknown : reason === null ? say.limitMet : say.limitNotMet;
    const kind = unknown ? 'unknown' : reason === null ? 'met' : 'not-met';
    return html`<li class="${kind}"><span>${challenge.sentences[index] ?? ''}</span> <strong>${verdict}</strong>${reason === null ? html`` : html` <span class="aside">${reason}</span>`}</li>`;
  });
  return html`<h3>${say.limits(challenge.title)}</h3>${rows.length === 0 ? html`<p class="aside">${say.noLimits}</p>` : html`<ul class="limits">${rows}</ul>`}`;
}

function figureList({ id }: Setup, figures: FigureSet): Html {
  const rows = shown.flatMap((figure) => {
    const found = figures.entry.get(figure);
    if (!isPresent(found)) return [];
    return [
      html`<div><dt>${figureDefinition(figure)?.name ?? figure}</dt><dd>${both(measureOfFigure(found))}</dd></div>`,
    ];
  });
  return html`<h3>${id === null ? say.figures : say.figuresOfSetup(id)}</h3><dl class="first-figures">${rows}</dl><p class="aside">${say.moreFigures}</p>`;
}
