import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { locate, nodeAt } from '../source/locate.ts';
import type { FolderCheck } from './folder-check.ts';

/** An acceptance says that everything was seen which the challenge wants the evidence to show; a final one is past that. */
export const evidenceNotSeen: FolderCheck = {
  code: 'evidence-not-seen',
  scope: 'ruling',
  check({ challenges, rulings, there }) {
    const byId = new Map(challenges.map((challenge) => [challenge.value.id, challenge]));
    return rulings.flatMap(({ value: ruling, source }): Problem[] => {
      const challenge = byId.get(ruling.challenge);
      if (challenge === undefined || there.files.has(`results/${ruling.challenge}.json`)) return [];
      const { shows } = challenge.value.flying.evidence;
      return ruling.flights.flatMap(({ flight, verdict, seen }, index): Problem[] => {
        const missing = shows.filter((word) => !seen.includes(word));
        if (verdict !== 'accepted' || missing.length === 0) return [];
        const path = ['flights', index, 'seen'];
        const at = nodeAt(source, path) === null ? ['flights', index, 'verdict'] : path;
        return [
          problemAt(source, at, 'value', 'evidence-not-seen', {
            message: `\`seen\`: the acceptance of flight ${flight} does not name ${missing.join(', ')}, which the challenge wants the evidence to show.`,
            found: seen.join(', '),
            accepted: shows.join(', '),
            suggestion: `seen: [${shows.join(', ')}]`,
            related: {
              ...locate(challenge.source, ['flying', 'evidence', 'shows'], 'value'),
              message: 'The challenge asks for it here.',
            },
          }),
        ];
      });
    });
  },
};
