import type { Problem } from '../problems/problem.ts';
import { nodeAt, toPlain } from '../source/locate.ts';
import { readSource } from '../source/read-source.ts';
import type { Plain, SourceDocument } from '../source/source.ts';
import { splitPlain } from '../source/split-plain.ts';
import { after, type Change } from './after.ts';
import { appendItem } from './append-item.ts';
import { type Piece, withPieces } from './pieces.ts';
import { removeField } from './remove-field.ts';
import { removeItem } from './remove-item.ts';
import { replaced, setField } from './set-field.ts';
import { inline, isList, isMap } from './yaml-text.ts';

/** The text after the changes; or why it was left as it is, with the problems that stand in the way. */
export type Rewritten =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly why: string; readonly problems: readonly Problem[] };

/**
 * Changes fields of a content file one after another, and leaves every other letter as it stands: remarks, order, blank
 * lines, line ends, a byte order mark, the text below. After each change the file is read again: where it does not say
 * exactly what was meant, nothing is changed and the answer says so. A file with mistakes is not touched.
 */
export function rewrite(file: string, text: string, changes: readonly Change[]): Rewritten {
  const mark = text.startsWith('\uFEFF') ? '\uFEFF' : '';
  let source = read(file, text);
  for (const change of changes) {
    if ('ok' in source) return source;
    const meant = after(toPlain(source.root), change);
    const pieces = meant === null ? null : piecesOf(source, change);
    if (meant === null || pieces === null) return refused(`${file} has no place for ${nameOf(change)}.`, []);
    const next = read(file, mark + withPieces(source.text, pieces));
    if ('ok' in next || !same(toPlain(next.root), meant) || next.body !== source.body)
      return refused(
        `${file} is written in a way in which ${nameOf(change)} cannot be changed without touching what stands around it. Write it there by hand.`,
        [],
      );
    source = next;
  }
  return 'ok' in source ? source : { ok: true, text: mark + source.text };
}

function read(file: string, text: string): SourceDocument | Extract<Rewritten, { ok: false }> {
  const { source, problems } = readSource(file, text, splitPlain);
  const errors = problems.filter(({ severity }) => severity === 'error');
  if (source !== null && errors.length === 0) return source;
  return refused(`${file} cannot be read, so nothing is written into it.`, errors);
}

function piecesOf(source: SourceDocument, change: Change): Piece[] | null {
  const { at } = change;
  const parent = nodeAt(source, at.slice(0, -1));
  const last = at.at(-1);
  if (parent === null || last === undefined) return null;
  if (parent.kind === 'map') {
    const key = String(last);
    if (change.do === 'remove') return removeField(source, parent, key);
    if (change.do === 'append') return appendItem(source, parent, key, change.value, change.spread);
    return setField(source, parent, key, change.value, change.before, change.spread);
  }
  const item = parent.kind === 'list' ? parent.items[Number(last)] : undefined;
  if (parent.kind !== 'list' || item === undefined || change.do === 'append') return null;
  if (change.do === 'remove') return removeItem(source, parent, Number(last));
  return [replaced(source, item, inline(change.value, 'flow'))];
}

function nameOf({ at }: Change): string {
  return `\`${at.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.')}\``;
}

function refused(why: string, problems: readonly Problem[]) {
  return { ok: false, why, problems } as const;
}

function same(a: Plain, b: Plain): boolean {
  if (isList(a) && isList(b)) return a.length === b.length && a.every((item, at) => same(item, b[at] ?? ''));
  if (!isMap(a) || !isMap(b)) return a === b;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length && keys.every((key) => key in b && same(a[key] ?? '', b[key] ?? ''))
  );
}
