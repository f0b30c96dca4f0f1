import * as z from 'zod';
import { fieldName } from '../../entries/problems/field-name.ts';
import type { Problem } from '../../entries/problems/problem.ts';
import { entry } from '../../entries/schema/entry.ts';
import { describedAt, readersAt } from '../../entries/schema/field-at.ts';
import type { Path, Plain, SourceDocument } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { isGapOf } from './place-in-form.ts';
import { splitItems } from './split-items.ts';
import { titleAt } from './title-at.ts';

/** A problem as the form tells it: by the names of fields, not by the keys of the file. */
export interface ToldInForm {
  /** Right under the field. */
  readonly atField: string;
  /** Anywhere else. */
  readonly alone: string;
  /** A value that would mend it, and the field it belongs in. */
  readonly offer: { readonly path: Path; readonly value: Plain; readonly text: string } | null;
}

/**
 * @param path of the text that the problem is about
 * @param place the field of the form that it is told at
 */
export function toldInForm(
  source: SourceDocument,
  written: Plain,
  problem: Problem,
  path: Path,
  place: Path,
): ToldInForm {
  const offer = isGapOf(problem) ? null : offerOf(problem, path, place);
  const title = titleAt(written, place);
  const own = say.toldAtField[problem.code];
  if (own !== undefined)
    return { atField: own, alone: title === '' ? own : `${title}: ${lowered(own)}`, offer };
  const asked = problem.message.replace(` Did you mean "${offer?.text ?? ''}"?`, '');
  const name = namesOf(source, path).find((one) => asked.startsWith(one));
  const rest = plainWords(asked.slice(name?.length ?? 0), place);
  // Either the name is called out, or it is the subject of the sentence.
  if (name !== undefined && rest.startsWith(': '))
    return { atField: raised(rest.slice(2)), alone: `${title}${rest}`, offer };
  const short = titleOfField(place);
  if (name !== undefined && short !== undefined)
    return { atField: `${short}${rest}`, alone: `${title}${rest}`, offer };
  const whole = plainWords(asked, place);
  return { atField: whole, alone: whole, offer };
}

/** What sentences may call a field, or what is around it, the longest first. */
function namesOf(source: SourceDocument, path: Path): string[] {
  const whole = path.map((_, length) => fieldName(source, path.slice(0, path.length - length)));
  return [...whole, `\`${path.findLast((step) => typeof step === 'string') ?? ''}\``];
}

/** The title of a field, or of the list of which it is a box. */
function titleOfField(place: Path): string | undefined {
  const named = place.slice(0, place.findLastIndex((step) => typeof step === 'string') + 1);
  return describedAt(entry, named)?.title;
}

/** The names of fields in the place of keys in backticks, and what is to be written without its key. */
function plainWords(sentence: string, place: Path): string {
  return sentence.replace(/`([^`]+)`/g, (_, code: string) => {
    const [, key, value] = /^([a-z][a-z-]*): (.+)$/.exec(code) ?? [];
    if (key === undefined || value === undefined)
      return titleOf(code, place) ?? (/^[a-z][a-z-]*$/.test(code) ? `“${code}”` : code);
    const plain = splitItems(value).join(', ');
    const title = place.includes(key) ? undefined : titleOf(key, place);
    return title === undefined ? plain : `${title}: ${plain}`;
  });
}

/** The title of a key as it is named beside a field. */
function titleOf(code: string, place: Path): string | undefined {
  const keys = code.split('.');
  for (let length = place.length; length >= 0; length -= 1) {
    const title = describedAt(entry, [...place.slice(0, length), ...keys])?.title;
    if (title !== undefined) return `“${title}”`;
  }
  return undefined;
}

function offerOf({ suggestion }: Problem, path: Path, place: Path): ToldInForm['offer'] {
  if (suggestion === null) return null;
  const text = /^"(?:[^"\\]|\\.)*"$/.test(suggestion) ? String(JSON.parse(suggestion)) : suggestion;
  if (isTaken(place, text)) return { path: place, value: text, text };
  const items = /^\[.*\]$/.test(text) ? splitItems(text) : [];
  return items.length > 1 && isTaken(path, items) ? { path, value: items, text: items.join(', ') } : null;
}

function isTaken(path: Path, value: string | readonly string[]): boolean {
  return readersAt(entry, path).some((reader) => z.safeParse(reader, value).success);
}

function raised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function lowered(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
