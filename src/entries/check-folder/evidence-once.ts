import { evidenceNamed, type FlightEvidence } from '../folder/references.ts';
import { placeOver, problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';
import type { FolderCheck } from './folder-check.ts';

interface Shown extends FlightEvidence {
  readonly source: SourceDocument;
}

/** One link can be of two flights, where it shows both; within a challenge that is worth a look. */
export const evidenceOnce: FolderCheck = {
  code: 'evidence-twice',
  scope: 'entry',
  check({ entries }) {
    const firsts = new Map<string, Shown>();
    return entries.flatMap(({ value, source }) =>
      evidenceNamed(source).flatMap((evidence): Problem[] => {
        const key = `${value.challenge} ${evidence.name}`;
        const first = firsts.get(key);
        if (first === undefined) {
          firsts.set(key, { ...evidence, source });
          return [];
        }
        const where = first.source === source ? '' : ` in ${first.source.file}`;
        return [
          problemOver(source, evidence.node.start, evidence.node.end, 'evidence-twice', {
            message: `Flight ${evidence.flight} shows the link "${evidence.name}", and so does flight ${first.flight}${where}. Where one film shows both, say in \`note\` where each begins; else correct the link.`,
            found: evidence.name,
            related: {
              ...placeOver(first.source, first.node.start, first.node.end),
              message: `flight ${first.flight} shows it here`,
            },
          }),
        ];
      }),
    );
  },
};
