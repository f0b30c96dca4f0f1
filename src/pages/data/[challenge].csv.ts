import type { APIRoute } from 'astro';
import type { ChallengeRecord } from '../../almanac/almanac.ts';
import { challengeDataPaths } from '../../components/challenge-paths.ts';
import { challengeCsv } from '../../publish/csv.ts';

export const getStaticPaths = challengeDataPaths;

export const GET: APIRoute<{ record: ChallengeRecord }> = ({ props }) =>
  new Response(challengeCsv(props.record), { headers: { 'content-type': 'text/csv; charset=utf-8' } });
