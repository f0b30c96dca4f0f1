import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../../almanac/handover.ts';
import { packed } from '../../../client/plot/plot-data.ts';
import { plotDataOf } from '../../../components/plot/plot-data-of.ts';

export function getStaticPaths() {
  return currentAlmanac().challenges.map(({ challenge }) => ({ params: { challenge: challenge.id } }));
}

/** What the plot of a challenge is drawn from in a browser. */
export const GET: APIRoute = ({ params }) => {
  const record = currentAlmanac().challenges.find(({ challenge }) => challenge.id === params.challenge);
  if (record === undefined) return new Response(null, { status: 404 });
  return new Response(`${JSON.stringify(packed(plotDataOf(record)))}\n`, {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
};
