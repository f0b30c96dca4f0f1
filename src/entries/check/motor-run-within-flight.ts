import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { EntryCheck } from './entry-check.ts';
import { relatedAt } from './first-of.ts';

/** The watches stop at the landing and a motor may run down on the ground, but not for much longer, s. */
const allowed = 1;

/** A motor does not run longer than the flight; where it seems to, minutes may have been written as seconds. */
export const checkMotorRunWithinFlight: EntryCheck = (draft, source) =>
  (draft.flights ?? []).flatMap((flight, index): Problem[] => {
    const run = flight?.['motor-run'];
    const key = flight?.watches === undefined ? 'time' : 'watches';
    const times = flight?.watches?.filter((watch) => watch !== null) ?? (flight?.time ? [flight.time] : []);
    const [longest] = times.toSorted((a, b) => b.value - a.value);
    if (run === undefined || longest === undefined || run.value <= longest.value + allowed) return [];
    const path = ['flights', index, 'motor-run'];
    const clock = asClock(longest.written);
    const how =
      clock === null
        ? 'Correct the wrong one.'
        : `Did you mean "${clock}", minutes and seconds, as the time?`;
    return [
      problemAt(source, path, 'value', 'motor-run-beyond-flight', {
        message: `${fieldName(source, path)} is "${run.written}", but \`${key}\` is "${longest.written}": the motors ran longer than the model flew. ${how}`,
        found: run.written,
        accepted: `at most the time of the flight, ${longest.written}`,
        related: relatedAt(source, ['flights', index, key], 'the time stands here'),
      }),
    ];
  });

/** `1.05 s` as `1:05`; null where it cannot be minutes and seconds. */
function asClock(written: string): string | null {
  const match = /^([1-9]\d?)[.,]([0-5]\d)\s*(?:s|sec|seconds?)?$/.exec(written);
  return match === null ? null : `${match[1]}:${match[2]}`;
}
