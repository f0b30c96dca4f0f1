import type { APIRoute } from 'astro';

// The site's mark: a skein of two strands, wound.
const mark = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><rect width="32" height="32" rx="5" fill="#fbfaf5"/><g fill="none" stroke="#7c3210" stroke-width="3" stroke-linecap="round"><path d="M5 16c3.7-9 7.3-9 11 0s7.3 9 11 0"/><path d="M5 16c3.7 9 7.3 9 11 0s7.3-9 11 0"/></g></svg>\n`;

/** The picture in a browser's tab. */
export const GET: APIRoute = () => new Response(mark, { headers: { 'content-type': 'image/svg+xml' } });
