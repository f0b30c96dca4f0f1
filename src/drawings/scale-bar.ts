import { type Label, labelText } from './label.ts';
import type { Point } from './point.ts';
import { path, tenth } from './svg-text.ts';

const inch = 0.0254;
const foot = 12 * inch;

/** Round lengths that a bar may have: 1, 2, 5 and their tens in metres and feet, and the parts of a foot. */
function roundLength(longest: number, system: keyof Label): { metres: number; text: string } {
  if (system === 'imperial' && longest < foot) {
    const inches = [6, 3, 2, 1].find((count) => count * inch <= longest) ?? 0.5;
    return { metres: inches * inch, text: `${inches}\u00a0in` };
  }
  const unit = system === 'metric' ? (longest < 1 ? 0.001 : 1) : foot;
  const count = roundBelow(longest / unit);
  return {
    metres: count * unit,
    text: `${count}\u00a0${system === 'imperial' ? 'ft' : unit === 1 ? 'm' : 'mm'}`,
  };
}

/** The largest of 1, 2, 5 times a power of ten that is not above a number above 0. */
function roundBelow(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most) + 1e-9);
  const first = [5, 2, 1].find((digit) => digit * power <= most * (1 + 1e-9)) ?? 1;
  return Number((first * power).toPrecision(1));
}

/** A bar of a round length, at most so many units of the paper long, for one system of units. */
export function scaleBar(
  scale: number,
  longest: number,
  system: keyof Label,
): { readonly length: number; readonly text: string } {
  const { metres, text } = roundLength(longest / scale, system);
  return { length: metres * scale, text };
}

/** Both bars, each shown with its system of units, from their left end. */
export function drawScaleBar({ x, y }: Point, scale: number, longest: number): string {
  return (['metric', 'imperial'] as const)
    .map((system) => {
      const { length, text } = scaleBar(scale, longest, system);
      const half = `M${tenth(x)} ${tenth(y)}h${tenth(length / 2)}v4h${tenth(-length / 2)}Z`;
      const whole = `M${tenth(x)} ${tenth(y)}h${tenth(length)}v4h${tenth(-length)}Z`;
      const words = labelText(
        { metric: text, imperial: text },
        { x: x + length + 8, y: y + 6, anchor: 'start' },
      );
      return `<g class="${system}">${path('drawn-bar', whole)}${path('drawn-bar-filled', half)}${words}</g>`;
    })
    .join('');
}
