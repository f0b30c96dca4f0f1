import { beginFile, inOrder, type PlainMap } from '../../src/entries/begin/begin-file.ts';
import { type Beginning, setNamed } from '../../src/entries/begin/beginning.ts';
import { isMissing, problemsIn } from '../../src/entries/begin/problems-in.ts';
import { describeFields, describeShape } from '../../src/entries/describe/describe-shape.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { entry } from '../../src/entries/schema/entry.ts';
import { toPlain } from '../../src/entries/source/locate.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';
import { settingField } from '../../src/entries/write/edit-field.ts';
import { rewrite } from '../../src/entries/write/rewrite.ts';
import { isList, isMap } from '../../src/entries/write/yaml-text.ts';
import { UsageError } from '../terminal/command-line.ts';
import { printable } from '../terminal/printable.ts';

/** Something new under way: the file it goes into, and what that file says with the fields there are. */
export interface Making {
  readonly beginning: Beginning;
  /** Below the content folder. */
  readonly file: string;
  /** What the file says now; null where it is begun. */
  readonly old: string | null;
  /** The file with the new thing in it. Throws a UsageError where it cannot be written there. */
  textWith(fields: PlainMap): string;
}

/** A file that is begun. */
export function newFile(beginning: Beginning, file: string): Making {
  const fields = describeFields(beginning.schema);
  return { beginning, file, old: null, textWith: (given) => beginFile(fields, { ...beginning, given }) };
}

/** An item of a list in the file of an aircraft, which is begun where there is none. */
export function newItem(beginning: Beginning, file: string, old: string, list: 'flights' | 'setups'): Making {
  const { source, problems } = readSource(file, old, splitPlain);
  if (source === null)
    throw new UsageError(`${sentences(problems)}\n${file} cannot be read, so nothing is written into it.`);
  const plain = toPlain(source.root);
  const items = isMap(plain) ? plain[list] : undefined;
  const place = items === undefined || !isList(items) ? 0 : items.length;
  const shape = describeShape(beginning.schema);
  const textWith = (given: PlainMap): string => {
    const change = settingField(entry, plain, [list, place], inOrder(shape, given));
    const rewritten = change === null ? null : rewrite(file, old, [change]);
    if (rewritten?.ok === true) return rewritten.text;
    throw new UsageError(
      rewritten === null
        ? `\`${list}\` in ${file} is no list, so nothing is written into it.`
        : `${sentences(rewritten.problems)}\n${rewritten.why}`.trim(),
    );
  };
  return { beginning, file, old, textWith };
}

/** What is wrong with the new thing itself: the errors of its file that were not there before. */
export function faultsOf(making: Making, fields: PlainMap): readonly Problem[] {
  const { file, old } = making;
  const before = new Set(old === null ? [] : problemsIn(file, old).map(({ message }) => message));
  return problemsIn(file, making.textWith(fields)).filter(
    ({ severity, message }) => severity === 'error' && !before.has(message),
  );
}

/** What is not given yet, of what a file needs. */
export function missingOf(making: Making, fields: PlainMap): readonly Problem[] {
  return faultsOf(making, fields).filter(isMissing);
}

/** Throws a UsageError that says everything that is wrong with what was given. */
export function refuseFaults(making: Making, fields: PlainMap): void {
  const faults = faultsOf(making, fields).filter((fault) => !isMissing(fault));
  if (faults.length > 0) throw new UsageError(`${sentences(faults)}\nNothing is written.`);
}

/** The fields with an answer among them, or what is wrong with it. */
export function answered(
  making: Making,
  fields: PlainMap,
  field: string,
  answer: string,
): { readonly fields: PlainMap; readonly wrong: string | null } {
  const next = setNamed(making.beginning.schema, fields, field, answer);
  if (!next.ok) return { fields, wrong: next.message };
  return { fields: next.fields, wrong: wrongWith(making, next.fields) };
}

/** The first thing that is wrong; null where nothing is. */
function wrongWith(making: Making, fields: PlainMap): string | null {
  try {
    const fault = faultsOf(making, fields).find((each) => !isMissing(each));
    return fault === undefined ? null : printable(fault.message);
  } catch (error) {
    if (error instanceof UsageError) return error.message;
    throw error;
  }
}

/** Problems as sentences, one on a line. */
export function sentences(problems: readonly Problem[]): string {
  return problems.map(({ message }) => printable(message)).join('\n');
}
