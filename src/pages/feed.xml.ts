import type { APIRoute } from 'astro';
import { currentAlmanac } from '../almanac/handover.ts';
import { siteFeed } from '../components/site-feed.ts';

export const GET: APIRoute = ({ site }) =>
  new Response(siteFeed(currentAlmanac(), site?.origin ?? null), {
    headers: { 'content-type': 'application/atom+xml; charset=utf-8' },
  });
