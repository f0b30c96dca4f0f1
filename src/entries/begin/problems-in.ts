import type { CalendarDate } from '../../model/calendar.ts';
import { flightsInFuture } from '../check-judged/flight-in-future.ts';
import { classifyPath } from '../folder/classify-path.ts';
import type { Problem } from '../problems/problem.ts';
import { readSource } from '../source/read-source.ts';
import { splitPlain } from '../source/split-plain.ts';
import { understandBatch } from '../understand/batch.ts';
import { understandChallenge } from '../understand/challenge.ts';
import { understandEntry } from '../understand/entry.ts';

/**
 * What is wrong with the text of an entry, a challenge or a batch by itself, read as the site reads it; with the day it is, also the
 * flights of an entry that are dated after it.
 */
export function problemsIn(
  file: string,
  text: string,
  today: CalendarDate | null = null,
): readonly Problem[] {
  const { source, problems } = readSource(file, text, splitPlain);
  if (source === null) return problems;
  const place = classifyPath(file);
  if (place.kind === 'entry') {
    const { entry, problems: own } = understandEntry(source, place);
    const early = entry === null || today === null ? [] : flightsInFuture(entry, source, today);
    return [...problems, ...own, ...early];
  }
  if (place.kind === 'challenge') return [...problems, ...understandChallenge(source, place).problems];
  if (place.kind === 'batch') return [...problems, ...understandBatch(source, place).problems];
  return problems;
}

const missing: ReadonlySet<string> = new Set(['missing-field', 'mass-missing', 'time-missing']);

/** Whether a problem is that something is not written yet. */
export function isMissing({ code }: Problem): boolean {
  return missing.has(code);
}
