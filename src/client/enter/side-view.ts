import { enter as say } from '../../words/enter.ts';
import { html } from '../compare/html.ts';
import type { Checked } from './checked.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';
import { sketchOf } from './sketch-of.ts';

/** Shows what an entry comes to; figures and drawings are loaded once there is something to draw. */
export function sideView(
  box: HTMLElement,
  site: EnterSite,
): (text: string, now: Checked, challenge: EnterChallenge | null) => Promise<void> {
  let latest: Checked | null = null;
  return async (text, now, challenge) => {
    latest = now;
    const entry = sketchOf(text, now);
    const markup =
      entry === null
        ? html`<p class="aside">${say.noDrawingYet}</p>`.text
        : (await import('./side-markup.ts')).sideMarkup(entry, now.entry === null, site, challenge);
    // Whoever typed on meanwhile is answered by that.
    if (latest === now && box.innerHTML !== markup) box.innerHTML = markup;
  };
}
