import type { ChangedValue } from './changed-values.ts';

const hidden = 'not shown, for a junior goes by handle';

/** A name or club, in the file of a builder and among the builders of an entry. */
const inBuilderFile = /^`(?:name|club|link)`$/;
const inEntry = /^`builder\.(?:name|club)`$|^`(?:name|club)` in item \d+ of `builder`$/;

/** The values of a junior's entry or file without names and clubs: what should not have been written is not repeated. */
export function withoutNames(
  values: readonly ChangedValue[],
  of: 'entry' | 'builder',
): readonly ChangedValue[] {
  const names = of === 'entry' ? inEntry : inBuilderFile;
  const hide = (text: string | null) => (text === null ? null : hidden);
  return values.map((value) =>
    names.test(value.field) ? { ...value, before: hide(value.before), after: hide(value.after) } : value,
  );
}
