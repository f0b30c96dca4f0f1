import type { FrozenResult } from '../contest/frozen/frozen.ts';
import { standingData } from './data-file.ts';

/** `results/<challenge>.json`: a frozen result as text, in the shapes of the data file; the same result, the same bytes. */
export function frozenFile(frozen: FrozenResult): string {
  const { format, generator, closed, challenge, standings, ...rest } = frozen;
  const written = {
    format,
    generator,
    closed,
    challenge,
    standings: standings.map(standingData),
    ...rest,
  };
  return `${JSON.stringify(written, null, 2)}\n`;
}
