import type { APIRoute } from 'astro';
import { currentAlmanac } from '../../almanac/handover.ts';
import { accentStyle } from '../../components/accent.ts';
import { paperStyle } from '../../components/paper-style.ts';
import { dateInWords } from '../../words.ts';

/** The club's own colour and the head of its paper as a style sheet, because pages carry no style of their own. */
export const GET: APIRoute = () => {
  const { site, now } = currentAlmanac();
  return new Response(accentStyle(site.accent) + paperStyle(site.title, dateInWords(now.slice(0, 10))), {
    headers: { 'content-type': 'text/css; charset=utf-8' },
  });
};
