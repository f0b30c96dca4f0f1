import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import type { EntryCheck } from './entry-check.ts';

/** What tells who somebody is, as a builder's fields have it. */
const telling = ['name', 'club', 'link'] as const;

type Told = { readonly junior?: boolean } & { readonly [key in (typeof telling)[number]]?: string };

/** A junior goes by the handle alone: pages leave out what else is written, but the file and its history keep it. */
export function juniorNamed(builder: Told, source: SourceDocument, at: Path = []): Problem[] {
  if (builder.junior !== true) return [];
  return telling
    .filter((key) => builder[key] !== undefined)
    .map((key) => {
      const path = [...at, key];
      return problemAt(source, path, 'key', 'junior-named', {
        message: `${fieldName(source, path)} is given for a junior. No page shows it, but whoever gets the file reads it, and its history keeps it for good. Take it out: the handle is enough.`,
      });
    });
}

/** Of no builder of an entry who is a junior more is written than the handle. */
export const checkJuniorNamed: EntryCheck = (draft, source) =>
  (draft.builder ?? []).flatMap((builder, index) =>
    builder === null || typeof builder === 'string' ? [] : juniorNamed(builder, source, ['builder', index]),
  );
