import { plot as say } from '../../words/plot.ts';
import type { Ignored } from './plot-choice.ts';

/** What was found in the address, and what is shown instead. */
export function ignoredSentence({ name, value }: Ignored): string {
  return name === 'x' || name === 'y' ? say.ignored.figure(value, name) : say.ignored[name](value);
}
