import { leaf, type Reading, refused, taken } from './leaf.ts';
import { textPatterns } from './text-patterns.ts';

/**
 * The name of a time zone as the IANA time zone database writes them. Only the form is checked: which zones exist
 * differs from computer to computer, and nothing but a sentence rests on it.
 */
export function timeZone() {
  return leaf(
    { kind: 'time-zone' },
    (written): Reading<string> =>
      textPatterns['time-zone'].test(written)
        ? taken(written)
        : refused(
            'not-a-time-zone',
            `"${written}" is not the name of a time zone.`,
            written,
            'an area and a place, such as Europe/London, or UTC',
          ),
  );
}
