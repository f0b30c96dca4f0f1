import type { Entry, Setup } from '../../model/entry.ts';
import { pathOfSetup } from '../source/path-of-setup.ts';
import type { Path, SourceDocument } from '../source/source.ts';

/** Whether a setup is the entry as first written, or wrote any of these parts of the design itself. */
export function touches(setup: Setup, place: number, parts: readonly string[]): boolean {
  return place === 0 || setup.overrides.some((path) => parts.includes(path.split('.')[0] ?? ''));
}

/** Where the value of a field stands that holds in a setup: in that setup, in one before it, or in the entry. */
export function pathInForce(
  source: SourceDocument,
  setups: Entry['setups'],
  place: number,
  field: string,
): Path {
  const writer = setups
    .slice(1, place + 1)
    .findLast(({ overrides }) => overrides.some((path) => path === field || path.startsWith(`${field}.`)));
  return [...(writer === undefined ? [] : pathOfSetup(source, writer.id)), ...field.split('.')];
}
