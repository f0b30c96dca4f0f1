import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../almanac/handover.ts';
import { accentStyle } from '../../components/accent.ts';

/** The club's own colour as a style sheet, because pages carry no style of their own. */
export const GET: APIRoute = () =>
  new Response(accentStyle(currentAlmanac().site.accent), {
    headers: { 'content-type': 'text/css; charset=utf-8' },
  });
