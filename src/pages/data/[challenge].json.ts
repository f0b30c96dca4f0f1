import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../almanac/handover.ts';
import { challengeData } from '../../publish/data-file.ts';

export function getStaticPaths() {
  return currentAlmanac().challenges.map(({ challenge }) => ({ params: { challenge: challenge.id } }));
}

export const GET: APIRoute = ({ params }) => {
  const almanac = currentAlmanac();
  const record = almanac.challenges.find(({ challenge }) => challenge.id === params.challenge);
  if (record === undefined) return new Response(null, { status: 404 });
  return new Response(challengeData(record), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
};
