import * as z from 'zod';
import { type TextForm, textForms } from './text-form.ts';

/** Why a text in a field is refused: everything a problem needs but the field's name and its place. */
export interface Refusal {
  /** A code of `problem-codes.ts`. */
  readonly code: string;
  /** Full sentences that quote what was found and say what to do, without the field's name. */
  readonly message: string;
  readonly found: string;
  /** The accepted forms, with an example. */
  readonly accepted: string;
  /** Text ready to paste in place of what was found. */
  readonly suggestion?: string;
}

export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: Refusal };

/** Longer than any quantity, date, name or limit: no reader has to be quick with more. */
const longestValue = 500;

/**
 * A field written as one text of a form, of at most so many characters. The refusal travels in the issue's `params`, so that one
 * place turns every issue into a problem.
 */
export function leaf<T>(
  form: TextForm,
  read: (text: string) => Reading<T>,
  longest: number = form.kind === 'text' ? form.longest : longestValue,
) {
  const schema = z.string().transform((text, context): T => {
    const reading =
      text === '' ? nothing<T>() : text.length > longest ? tooLong<T>(text, longest) : read(text);
    if (reading.ok) return reading.value;
    context.issues.push({
      code: 'custom',
      input: text,
      message: reading.fault.message,
      params: { ...reading.fault },
    });
    return z.NEVER;
  });
  return schema.register(textForms, { form });
}

/** A reading that succeeded. */
export function taken<T>(value: T): Reading<T> {
  return { ok: true, value };
}

/** A reading that failed: what is wrong in a sentence, then what to write instead. */
export function refused<T>(
  code: string,
  wrong: string,
  found: string,
  accepted: string,
  suggestion?: string,
): Reading<T> {
  const message = `${wrong} Write ${accepted}.`;
  const offer = suggestion === undefined ? {} : { suggestion };
  return { ok: false, fault: { code, message, found, accepted, ...offer } };
}

function tooLong<T>(text: string, longest: number): Reading<T> {
  const found = `${text.slice(0, 40)}…`;
  return refused(
    'too-long',
    `"${found}" has ${text.length} characters.`,
    found,
    `at most ${longest} of them; what there is to tell has its place in the text below the fields`,
  );
}

function nothing<T>(): Reading<T> {
  return refused('empty-field', 'nothing is written here.', '', 'a value, or leave the key out');
}
