import type { ProblemFields } from '../problems/make-problem.ts';
import type { ProblemCode } from '../problems/problem-codes.ts';
import { reservedNames } from './reserved-names.ts';

export const slug = /^[a-z0-9-]{1,64}$/;
const datedSlug = /^\d{4}-\d{2}-\d{2}-[a-z0-9-]+$/;

/** Names that Windows keeps for devices, whatever ending a file has (its documentation on naming files; from memory). */
const device = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** Why a file or folder may not have this name; null where it may. A dated one begins with its date. */
export function slugFault(
  name: string,
  dated = false,
): { readonly code: ProblemCode; readonly fields: ProblemFields } | null {
  if (!slug.test(name)) {
    const suggestion = nearestSlug(name);
    const message = `The name "${name}" is part of an address: name it with a-z, 0-9 and hyphens only, at most 64 of them${suggestion === null ? '' : `, such as "${suggestion}"`}.`;
    return {
      code: 'bad-name',
      fields: { message, found: name, accepted: 'a-z, 0-9 and hyphens, 1 to 64 characters', suggestion },
    };
  }
  if (dated && !datedSlug.test(name)) {
    const message = `The name "${name}" must begin with the date, then a hyphen and a word: 2027-05-09-first-flights.md, for example.`;
    return { code: 'bad-name', fields: { message, found: name, accepted: '<date>-<slug>' } };
  }
  if (device.test(name)) {
    const message = `The name "${name}" is that of a device on Windows, where nobody could have a copy of this folder: choose another.`;
    return { code: 'reserved-name', fields: { message, found: name, accepted: 'any other name' } };
  }
  if (!reservedNames.has(name)) return null;
  const message = `The name "${name}" is one the site itself needs: choose another.`;
  return { code: 'reserved-name', fields: { message, found: name, accepted: 'any other name' } };
}

/** The name in lower case, without accents, other characters as hyphens; null where nothing is left. */
export function nearestSlug(name: string): string | null {
  const near = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 64);
  return near === '' || reservedNames.has(near) ? null : near;
}
