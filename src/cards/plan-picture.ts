import type { EntryRecord } from '../almanac/almanac.ts';
import type { Paper } from '../drawings/paper.ts';
import { planShape } from '../drawings/plan-shape.ts';
import { layOutSheet } from '../drawings/sheet.ts';
import { viewFromAbove } from '../drawings/view-from-above.ts';

/** The place of the plan on a card, in pixels. */
export const planSize = { width: 400, height: 236 } as const;

const paper: Paper = {
  name: 'wide',
  width: planSize.width,
  tallest: planSize.height,
  sides: 8,
  top: 8,
  bottom: 8,
  gap: 0,
  letter: 13,
};

/** The inks of styles/drawing.css in the light scheme, a little bolder: a picture of its own reads no style sheet. */
const inks = [
  '[class^="drawn-"]{fill:none;stroke:#1d1c19;stroke-width:1.2;stroke-linejoin:round}',
  '.drawn-outline{fill:#f4f2e9;stroke-width:1.8}',
  '.drawn-stick,.drawn-mark{fill:#fbfaf5}',
  '.assumed{stroke-dasharray:6 4}',
  '.drawn-joint,.drawn-swept,.drawn-axis,.drawn-turn{stroke:#8c8573}',
  '.drawn-axis{stroke-dasharray:12 3 2 3}',
  '.drawn-fin,.drawn-disc,.drawn-mark-filled{fill:#1d1c19;stroke-width:.5}',
  '.drawn-skein{stroke:#7c3210;stroke-width:1.6}',
  '.drawn-peg{fill:#7c3210;stroke:none}',
].join('');

/** The headline design of an aircraft from above, as an SVG; null where nothing gives its wing a depth. */
export function planPicture({ headline, figures }: EntryRecord): string | null {
  const shape = planShape(headline.design, figures);
  if (shape === null) return null;
  const sheet = layOutSheet([{ shape, forwards: 0 }], paper, false);
  const top = Math.round((sheet.height - planSize.height) / 2);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${planSize.width}" height="${planSize.height}" ` +
    `viewBox="0 ${top} ${planSize.width} ${planSize.height}"><style>${inks}</style>${viewFromAbove(shape, sheet)}</svg>`
  );
}
