import type { Point } from './point.ts';

const written: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it may stand in SVG, in an element or an attribute. */
export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => written[sign] ?? sign);
}

/** A tenth of a unit of the paper is finer than any screen shows it. */
export function tenth(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

/** A closed outline as path data. */
export function closedPath(points: readonly Point[]): string {
  return `M${points.map(({ x, y }) => `${tenth(x)} ${tenth(y)}`).join('L')}Z`;
}

/** A straight line as path data. */
export function linePath(from: Point, to: Point): string {
  return `M${tenth(from.x)} ${tenth(from.y)}L${tenth(to.x)} ${tenth(to.y)}`;
}

/** A path with its class. */
export function path(className: string, data: string): string {
  return `<path class="${className}" d="${data}"/>`;
}
