import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../almanac/handover.ts';
import { challengeData } from '../../publish/data-file.ts';

export function getStaticPaths() {
  // Nothing can lead on from an address of data: a former one holds the same.
  return currentAlmanac().challenges.flatMap(({ challenge: { id, formerly } }) =>
    [id, ...formerly].map((name) => ({ params: { challenge: name }, props: { id } })),
  );
}

export const GET: APIRoute<{ id: string }> = ({ props }) => {
  const almanac = currentAlmanac();
  const record = almanac.challenges.find(({ challenge }) => challenge.id === props.id);
  if (record === undefined) return new Response(null, { status: 404 });
  return new Response(challengeData(record), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
};
