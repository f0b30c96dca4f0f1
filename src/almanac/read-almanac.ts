import { readContent } from '../entries/folder/read-folder.ts';
import type { Almanac } from './almanac.ts';
import { assemble } from './assemble.ts';
import { sealFlights } from './seal-flights.ts';

/**
 * Content folder → almanac, in one call. Never throws for what people wrote: that becomes problems.
 *
 * @param options.content path of the content folder
 * @param options.now the instant of the build, ISO 8601 with an offset or `Z`
 */
export async function readAlmanac({ content, now }: { content: string; now: string }): Promise<Almanac> {
  return assemble(await readContent(content), now, sealFlights);
}
