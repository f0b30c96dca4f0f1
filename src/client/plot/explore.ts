import { drawPlot } from '../../charts/plot/draw-plot.ts';
import { layOutPlot } from '../../charts/plot/plot-layout.ts';
import { plot as say } from '../../words/plot.ts';
import { type ChosenPlot, chosenPlot, type System } from './chosen-plot.ts';
import { readControls, showControls } from './controls.ts';
import { element } from './element.ts';
import { plotDataFetcher } from './fetch-plot-data.ts';
import { figureKey } from './figure-key.ts';
import { ignoredSentence } from './ignored-sentence.ts';
import { asksForAll, type PlotChoice, readChoice, writtenChoice } from './plot-choice.ts';
import { type PlotData, unpacked } from './plot-data.ts';
import { missingList, plotTable } from './plot-table.ts';
import { type Shown, tieMarksToRows } from './pointing.ts';

const tool = document.querySelector<HTMLElement>('.plot-tool');
if (tool !== null) explore(tool);

/** Lets somebody choose what a plot shows. The address holds the choice, and everything else follows from it. */
function explore(tool: HTMLElement): void {
  const { own = '', others = '', entries = '' } = tool.dataset;
  const fetchData = plotDataFetcher();
  const part = (name: string) => tool.querySelector<HTMLElement>(`.plot-${name}`)!;
  const addressOf = ({ challenge, id }: { challenge: string; id: string }) => `${entries}${challenge}/${id}/`;
  let now: { data: PlotData; choice: PlotChoice } | null = null;
  let shown: Shown | null = null;

  const draw = (chosen: ChosenPlot) => {
    const width = Math.max(280, Math.min(760, Math.floor(part('sheet').clientWidth)));
    const layout = layOutPlot(chosen.plot, { width, height: Math.round(Math.min(560, 0.5 * width + 160)) });
    const rows = new Map(chosen.rows.map((row) => [row.id, row]));
    part('sheet').innerHTML = drawPlot(layout, {
      id: 'chosen',
      title: say.chart.title(chosen.x.name, chosen.y.name),
      description: say.chart.description(rows.size),
    });
    const told = (id: string) => {
      const row = rows.get(id);
      return row === undefined ? '' : say.pointed({ name: row.entry.name, x: row.plainX, y: row.plainY });
    };
    shown = { layout, told };
  };

  const show = () => {
    if (now === null) return;
    const { data, choice } = now;
    const chosen = chosenPlot(data, choice, systemInForce());
    if (chosen === null) return;
    draw(chosen);
    const division = data.divisions.find(({ id }) => id === choice.division)?.name ?? null;
    const key = figureKey(chosen, division);
    tool
      .querySelector('figcaption')
      ?.replaceChildren(
        element('ul', { class: 'plot-key' }, ...key.marks.map(({ svg, text }) => keyItem(svg, text))),
        ...key.sentences.map((text) => element('p', { class: 'legend' }, text)),
      );
    part('side').replaceChildren(
      plotTable(chosen, data, addressOf),
      ...missingList(chosen.missing, addressOf),
    );
    part('status').textContent = say.shown(
      chosen.rows.length,
      chosen.missing.length,
      chosen.rows.filter(({ best }) => best).length,
    );
  };

  /** Follows the address: at the start, after a choice, and on the way back. */
  const follow = async () => {
    const { search } = location;
    try {
      const all = asksForAll(search) ? [own, ...others.split(' ').filter(Boolean)] : [own];
      const data = unpacked(await fetchData(all));
      // Somebody chose again while the data were on their way.
      if (location.search !== search) return;
      const { choice, ignored } = readChoice(search, {
        figures: new Set(data.figures.map(({ id }) => id)),
        divisions: new Set(data.divisions.map(({ id }) => id)),
      });
      now = { data, choice };
      showControls(tool, choice, data);
      part('ignored').replaceChildren(
        ...ignored.map((one) => element('p', { class: 'notice' }, ignoredSentence(one))),
      );
      show();
    } catch {
      part('status').textContent = say.failed;
    }
  };

  const choose = (choice: PlotChoice) => {
    history.pushState(null, '', writtenChoice(choice));
    void follow();
  };

  tool.addEventListener('change', () => choose(readControls(tool)));
  tool.querySelector('button[name="swap"]')?.addEventListener('click', () => {
    const { x, y, logX, logY, ...rest } = readControls(tool);
    choose({ ...rest, x: y, y: x, logX: logY, logY: logX });
  });
  addEventListener('popstate', () => void follow());
  new MutationObserver(show).observe(document.documentElement, { attributeFilter: ['data-units'] });
  tool.hidden = false;
  let width = part('sheet').clientWidth;
  new ResizeObserver(() => {
    if (part('sheet').clientWidth === width) return;
    width = part('sheet').clientWidth;
    show();
  }).observe(part('sheet'));
  tieMarksToRows(tool, () => shown);
  void follow();
}

function systemInForce(): System {
  return document.documentElement.dataset.units === 'imperial' ? 'imperial' : 'metric';
}

function keyItem(svg: string, text: string): HTMLElement {
  const item = element('li', {});
  item.innerHTML = svg;
  item.append(text);
  return item;
}
