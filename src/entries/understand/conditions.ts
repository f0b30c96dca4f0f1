import type { Condition } from '../../model/challenge.ts';
import { ofRefusal } from '../problems/issues-to-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { factKeys } from '../schema/conditions.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { readFigure, readLimit } from './rule-words.ts';

/**
 * The conditions in a map of eligibility or of a division: declared facts first, then limits on figures as they were
 * written. Conditions with a mistake are left out; their problems are given.
 */
export function understandConditions(
  source: SourceDocument,
  path: Path,
  fields: Readonly<Record<string, unknown>>,
): { readonly conditions: readonly Condition[]; readonly problems: readonly Problem[] } {
  const conditions: Condition[] = [];
  const problems: Problem[] = [];
  for (const fact of factKeys) {
    const allowed = fields[fact];
    if (allowed !== undefined) conditions.push({ kind: 'fact', fact, allowed: [allowed].flat().map(String) });
  }
  for (const [key, sentence] of Object.entries(fields)) {
    if (typeof sentence !== 'string' || notFigures.has(key)) continue;
    const figure = readFigure(key);
    if (!figure.ok) {
      problems.push(ofRefusal(source, [...path, key], figure.fault, 'key'));
      continue;
    }
    const limit = readLimit(sentence, figure.value.kind);
    if (limit.ok) conditions.push({ kind: 'figure', figure: key, limit: limit.value });
    else problems.push(ofRefusal(source, [...path, key], limit.fault));
  }
  return { conditions, problems };
}

const notFigures: ReadonlySet<string> = new Set(['id', 'name', ...factKeys]);
