import type * as z from 'zod';
import type { Problem } from '../problems/problem.ts';
import type { challenge } from '../schema/challenge.ts';
import type { SourceDocument } from '../source/source.ts';
import type { Draft } from '../understand/draft.ts';

export type ChallengeFields = z.output<typeof challenge>;
export type ChallengeDraft = Draft<ChallengeFields>;

/** A check of one challenge by itself. It sees what could be read, whatever else is wrong with the file. */
export type ChallengeCheck = (draft: ChallengeDraft, source: SourceDocument) => readonly Problem[];
