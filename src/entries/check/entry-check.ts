import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';
import type { EntryDraft } from '../understand/setup-designs.ts';

/** A check of one entry by itself. It sees what could be read, whatever else is wrong with the file. */
export type EntryCheck = (draft: EntryDraft, source: SourceDocument) => readonly Problem[];
