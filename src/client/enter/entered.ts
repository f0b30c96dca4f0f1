import { nearestSlug } from '../../entries/folder/slug-rules.ts';
import type { Plain } from '../../entries/source/source.ts';
import { isMap } from '../../entries/write/yaml-text.ts';
import { foldedLetters } from '../board/folded-letters.ts';
import { type Checked, checked } from './checked.ts';
import type { Draft } from './draft.ts';

/** An entry as it is being written: its text, and everything that follows from it. */
export interface Entered {
  readonly draft: Draft;
  readonly now: Checked;
  /** The fields as they stood when the text could last be read. */
  readonly readable: Plain;
  /** The name of the aircraft; empty where there is none yet. */
  readonly name: string;
  /** The folder that was chosen, else the one that follows from the name; empty where neither is there. */
  readonly folder: string;
}

/** An entry in which nothing is written yet. */
export const emptyEntry = '---\n---\n';

/** What follows from a draft; `before` says what its fields were where its text cannot be read. */
export function entered(draft: Draft, before: Plain = {}): Entered {
  const now = checked(draft.text, { challenge: draft.challenge, id: draft.folder });
  const readable = now.plain ?? before;
  const written = isMap(readable) ? readable.name : undefined;
  const name = typeof written === 'string' ? written : '';
  const folder = draft.folder !== '' ? draft.folder : (nearestSlug(foldedLetters(name)) ?? '');
  return { draft, now, readable, name, folder };
}
