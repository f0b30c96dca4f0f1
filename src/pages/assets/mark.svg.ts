import type { APIRoute } from 'astro';
import { markPicture } from '../../components/mark-picture.ts';

/** The picture in a browser's tab. */
export const GET: APIRoute = () =>
  new Response(markPicture(3), { headers: { 'content-type': 'image/svg+xml' } });
