import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../../../almanac/handover.ts';
import { comparedAircraft } from '../../../../components/compare/compared-aircraft.ts';

export function getStaticPaths() {
  return currentAlmanac().challenges.flatMap(({ challenge, entries }) =>
    entries.map(({ entry }) => ({ params: { challenge: challenge.id, entry: entry.id } })),
  );
}

/** What the page of comparisons fetches of one aircraft: for that page alone, and not promised to stay as it is. */
export const GET: APIRoute = ({ params }) => {
  const almanac = currentAlmanac();
  const home = almanac.challenges.find(({ challenge }) => challenge.id === params.challenge);
  const record = home?.entries.find(({ entry }) => entry.id === params.entry);
  if (home === undefined || record === undefined) return new Response(null, { status: 404 });
  return new Response(JSON.stringify(comparedAircraft(almanac, home, record)), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
};
