import { drawPointedAt } from '../../charts/plot/draw-plot.ts';
import type { PlotLayout } from '../../charts/plot/plot-layout.ts';
import { nearestPoint } from './nearest-point.ts';

/** What a plot and its table show just now. */
export interface Shown {
  readonly layout: PlotLayout;
  /** What is said of the aircraft pointed at. */
  readonly told: (id: string) => string;
}

/**
 * Ties marks and rows together: who points at a mark sees its row, who reaches a row, by pointer or by keyboard, sees its
 * mark with its name; a press on a mark goes to its row.
 */
export function tieMarksToRows(tool: HTMLElement, shown: () => Shown | null): void {
  const sheet = tool.querySelector<HTMLElement>('.plot-sheet');
  const side = tool.querySelector<HTMLElement>('.plot-side');
  const said = tool.querySelector<HTMLElement>('.plot-pointed');
  if (sheet === null || side === null || said === null) return;

  const rowOf = (id: string) => side.querySelector<HTMLElement>(`tr[data-id="${CSS.escape(id)}"]`);
  const point = (id: string | null) => {
    for (const row of side.querySelectorAll('tr.pointed')) row.classList.remove('pointed');
    sheet.querySelector('.plot-here')?.remove();
    said.textContent = id === null ? '' : (shown()?.told(id) ?? '');
    const svg = sheet.querySelector('svg');
    const layout = shown()?.layout;
    if (id === null || svg === null || layout === undefined) return;
    const here = document.createElementNS('http://www.w3.org/2000/svg', 'g');
    here.setAttribute('class', 'plot-here');
    here.innerHTML = drawPointedAt(layout, id);
    svg.append(here);
    rowOf(id)?.classList.add('pointed');
  };
  const under = (event: PointerEvent | MouseEvent): string | null => {
    const svg = sheet.querySelector('svg');
    const layout = shown()?.layout;
    if (svg === null || layout === undefined) return null;
    const { left, top, width } = svg.getBoundingClientRect();
    const unit = layout.width / width;
    return (
      nearestPoint(layout.points, (event.clientX - left) * unit, (event.clientY - top) * unit)?.id ?? null
    );
  };
  const rowAt = (target: EventTarget | null) =>
    (target instanceof Element ? target.closest<HTMLElement>('tr[data-id]') : null)?.dataset.id ?? null;

  sheet.addEventListener('pointermove', (event) => {
    const id = under(event);
    point(id);
    if (id !== null) showInTable(rowOf(id));
  });
  sheet.addEventListener('pointerleave', () => point(rowAt(document.activeElement)));
  sheet.addEventListener('click', (event) => {
    const id = under(event);
    if (id !== null) rowOf(id)?.querySelector('a')?.focus();
  });
  side.addEventListener('pointerover', ({ target }) => point(rowAt(target) ?? rowAt(document.activeElement)));
  side.addEventListener('pointerleave', () => point(rowAt(document.activeElement)));
  side.addEventListener('focusin', ({ target }) => point(rowAt(target)));
  side.addEventListener('focusout', () => point(null));
}

/** Moves the rows inside their own frame only; the page stays where it is. */
function showInTable(row: HTMLElement | null): void {
  const frame = row?.closest<HTMLElement>('.scroll');
  if (row === null || frame === null || frame === undefined) return;
  const [inner, outer] = [row.getBoundingClientRect(), frame.getBoundingClientRect()];
  if (inner.top >= outer.top + inner.height && inner.bottom <= outer.bottom) return;
  frame.scrollTop += inner.top - outer.top - outer.height / 2;
}
