import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../../../almanac/handover.ts';

export function getStaticPaths() {
  return currentAlmanac().challenges.flatMap(({ challenge, entries }) =>
    entries.flatMap(({ entry, fileToChange }) =>
      fileToChange === null
        ? []
        : [{ params: { challenge: challenge.id, entry: entry.id }, props: { fileToChange } }],
    ),
  );
}

/** The file of an aircraft, letter for letter, for the form and for builders who have it no more; not promised to stay. */
export const GET: APIRoute<{ fileToChange: string }> = ({ props }) =>
  new Response(props.fileToChange, { headers: { 'content-type': 'text/markdown; charset=utf-8' } });
