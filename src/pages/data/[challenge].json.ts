import type { APIRoute } from 'astro';
import type { ChallengeRecord } from '../../almanac/almanac.ts';
import { challengeDataPaths } from '../../components/challenge-paths.ts';
import { challengeData } from '../../publish/data-file.ts';

export const getStaticPaths = challengeDataPaths;

export const GET: APIRoute<{ record: ChallengeRecord }> = ({ props }) =>
  new Response(challengeData(props.record), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
