import type { APIRoute } from 'astro';
import { skein } from '../../components/skein-path.ts';

const mark = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="3" fill="#fbfaf5"/><path transform="rotate(-32 16 16)" fill="none" stroke="#7c3210" stroke-width="2.75" stroke-linejoin="round" d="${skein}"/></svg>\n`;

/** The picture in a browser's tab. */
export const GET: APIRoute = () => new Response(mark, { headers: { 'content-type': 'image/svg+xml' } });
