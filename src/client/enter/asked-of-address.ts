import { slug } from '../../entries/folder/slug-rules.ts';

/** What the address of the form asks for. */
export interface Asked {
  /** The challenge for a new aircraft; null where none is named. */
  readonly challenge: string | null;
  /** The aircraft whose file to open; null where none is named. */
  readonly entry: { readonly challenge: string; readonly entry: string } | null;
}

/** Reads `?challenge=<challenge>` and `?entry=<challenge>/<entry>`; what could be the name of no folder is not heard. */
export function askedOf(query: string): Asked {
  const named = new URLSearchParams(query);
  const challenge = named.get('challenge') ?? '';
  const [home = '', entry = '', ...more] = (named.get('entry') ?? '').split('/');
  return {
    challenge: slug.test(challenge) ? challenge : null,
    entry: slug.test(home) && slug.test(entry) && more.length === 0 ? { challenge: home, entry } : null,
  };
}
