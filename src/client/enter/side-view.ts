import type { Problem } from '../../entries/problems/problem.ts';
import { enter as say } from '../../words/enter.ts';
import { html } from '../compare/html.ts';
import type { Checked } from './checked.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';
import { sketchOf } from './sketch-of.ts';
import { todayHere } from './today-here.ts';

/**
 * Shows what an entry comes to, and gives what `check` finds in that; figures and drawings are loaded once there is
 * something to draw.
 */
export function sideView(
  box: HTMLElement,
  site: EnterSite,
): (text: string, now: Checked, challenge: EnterChallenge | null) => Promise<readonly Problem[]> {
  let latest: Checked | null = null;
  return async (text, now, challenge) => {
    latest = now;
    const entry = sketchOf(text, now);
    const { markup, problems } =
      entry === null
        ? { markup: html`<p class="aside">${say.noDrawingYet}</p>`.text, problems: [] }
        : (await import('./side-markup.ts')).sideOf(
            entry,
            now.entry === null ? null : now.source,
            site,
            challenge,
            todayHere(new Date()),
          );
    // Whoever typed on meanwhile is answered by that.
    if (latest === now && box.innerHTML !== markup) box.innerHTML = markup;
    return problems;
  };
}
