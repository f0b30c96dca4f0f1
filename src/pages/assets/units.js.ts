import type { APIRoute } from 'astro';
import script from '../../client/units.js?raw';

/** The switch between the systems of units: a file of its own, because it must run before the page is drawn. */
export const GET: APIRoute = () =>
  new Response(script, { headers: { 'content-type': 'text/javascript; charset=utf-8' } });
