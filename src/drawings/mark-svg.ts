import { balanceMark, neutralMark } from './view-from-above.ts';

/** A mark alone, for the key beside a drawing that says in words what it is. */
export function markSvg(mark: 'balance' | 'neutral-point'): string {
  const drawn = mark === 'balance' ? balanceMark({ x: 10, y: 8 }) : neutralMark({ x: 18, y: 8 });
  return `<svg class="mark-sample" viewBox="0 0 20 16" aria-hidden="true">${drawn}</svg>`;
}
