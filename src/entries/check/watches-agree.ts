import type { Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import type { EntryCheck } from './entry-check.ts';

/** Two people press their watches further apart than this only by a slip, s. */
const furthest = 0.5;

/** Watches of one flight read nearly the same, and to the hundredth never quite. */
export const checkWatchesAgree: EntryCheck = (draft, source) =>
  (draft.flights ?? []).flatMap((flight, index) => {
    const watches = (flight?.watches ?? []).filter((watch) => watch !== null);
    return watches.length < 2 ? [] : doubts(source, ['flights', index, 'watches'], watches);
  });

function doubts(source: SourceDocument, path: Path, watches: readonly Quantity[]): Problem[] {
  const times = watches.map(({ value }) => value);
  const apart = Math.max(...times) - Math.min(...times);
  const found = watches.map(({ written }) => written).join(', ');
  const said = `${fieldName(source, path)} are ${found}`;
  if (apart > furthest + 1e-9)
    return [
      problemAt(source, path, 'value', 'watches-apart', {
        message: `${said}: ${Number(apart.toFixed(2))} s apart, and two people are seldom more than ${furthest} s apart. Look at the readings again.`,
        found,
      }),
    ];
  if (apart > 1e-9 || !watches.every(toTheHundredth)) return [];
  return [
    problemAt(source, path, 'value', 'watches-identical', {
      message: `${said}: the same to the hundredth of a second, which two people seldom manage. Write \`time\` where there was one watch, and each watch as it was read where there were more.`,
      found,
    }),
  ];
}

function toTheHundredth({ written }: Quantity): boolean {
  return /[.,]\d\d/.test(written);
}
