import type { Entry } from '../../model/entry.ts';
import { enter as say } from '../../words/enter.ts';
import { html } from '../compare/html.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';

/** Shows what an entry comes to; figures and drawings are loaded once there is something to draw. */
export function sideView(
  box: HTMLElement,
  site: EnterSite,
): (entry: Entry | null, challenge: EnterChallenge | null) => Promise<void> {
  let latest: Entry | null = null;
  return async (entry, challenge) => {
    latest = entry;
    const markup =
      entry === null
        ? html`<p class="aside">${say.noDrawingYet}</p>`.text
        : (await import('./side-markup.ts')).sideMarkup(entry, site, challenge);
    // Whoever typed on meanwhile is answered by that.
    if (latest === entry && box.innerHTML !== markup) box.innerHTML = markup;
  };
}
