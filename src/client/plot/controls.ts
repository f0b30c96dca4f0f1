import { plot as say } from '../../words/plot.ts';
import { firstChoice, type PlotChoice } from './plot-choice.ts';
import type { PlotData } from './plot-data.ts';

/** What the controls of a plot say. */
export function readControls(tool: HTMLElement): PlotChoice {
  const picked = (name: string) => tool.querySelector<HTMLSelectElement>(`select[name="${name}"]`)?.value;
  const ticked = (selector: string) =>
    tool.querySelector<HTMLInputElement>(`input${selector}`)?.checked ?? false;
  return {
    x: picked('x') ?? firstChoice.x,
    y: picked('y') ?? firstChoice.y,
    logX: ticked('[value="x"]'),
    logY: ticked('[value="y"]'),
    division: picked('division') || null,
    everywhere: ticked('[name="challenges"]'),
    bars: ticked('[name="bars"]'),
  };
}

/** Makes the controls say what was chosen, and offer the divisions there are. */
export function showControls(tool: HTMLElement, choice: PlotChoice, { divisions }: PlotData): void {
  const pick = (name: string, value: string) => {
    const select = tool.querySelector<HTMLSelectElement>(`select[name="${name}"]`);
    if (select !== null) select.value = value;
  };
  const tick = (selector: string, on: boolean) => {
    const box = tool.querySelector<HTMLInputElement>(`input${selector}`);
    if (box !== null) box.checked = on;
  };
  const offered = [{ id: '', name: say.noDivision }, ...divisions];
  tool
    .querySelector<HTMLSelectElement>('select[name="division"]')
    ?.replaceChildren(...offered.map(({ id, name }) => new Option(name, id)));
  pick('x', choice.x);
  pick('y', choice.y);
  pick('division', choice.division ?? '');
  tick('[value="x"]', choice.logX);
  tick('[value="y"]', choice.logY);
  tick('[name="challenges"]', choice.everywhere);
  tick('[name="bars"]', choice.bars);
}
