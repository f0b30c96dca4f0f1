import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../almanac/handover.ts';
import { rubberData } from '../../publish/data-file.ts';

export const GET: APIRoute = () =>
  new Response(rubberData(currentAlmanac()), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
