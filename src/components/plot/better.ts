import type { Better } from '../../charts/plot/frontier.ts';

// What a builder would call the better of two aircraft alike in all else, as common practice has it, no source: a longer
// time, a slower sink, and the same time with less mass or less rubber. A larger span counts as the harder task, as on the
// page of the records. Of all other figures neither end is better in itself: more energy is what one builder works for and
// what another does without.
const better: Readonly<Record<Better, readonly string[]>> = {
  more: [
    'span',
    'best-time',
    'duration-per-turn',
    'duration-per-gram-of-rubber',
    'predicted-time',
    'energy-use',
    'energy-per-gram-of-rubber',
    'glide-ratio',
    'static-figure-of-merit',
  ],
  less: ['airframe-mass', 'flying-mass', 'rubber-mass', 'wing-loading', 'sink-speed', 'power-to-stay-up'],
};

/** Which end of a figure is taken as the better one in a plot; null where neither is. */
export function betterOf(figure: string): Better | null {
  if (better.more.includes(figure)) return 'more';
  return better.less.includes(figure) ? 'less' : null;
}
