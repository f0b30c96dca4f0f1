/** What the browser keeps of an entry that is being written. */
export interface Draft {
  readonly text: string;
  readonly challenge: string;
  /** The name of the folder where one was chosen; empty where it follows from the name of the aircraft. */
  readonly folder: string;
}

/** Keeps one draft in the browser. A browser may refuse: then nothing is kept and `keep` says so. */
export interface DraftStore {
  readonly read: () => Draft | null;
  readonly keep: (draft: Draft) => boolean;
  readonly forget: () => void;
}

/**
 * @param storage of the browser, asked for each time, because asking may be refused
 * @param place of the page: several sites may share a host
 */
export function draftStore(storage: () => Storage, place: string): DraftStore {
  const key = `last-turn-entry ${place}`;
  return {
    read: () => {
      try {
        return readDraft(storage().getItem(key));
      } catch {
        return null;
      }
    },
    keep: (draft) => {
      try {
        storage().setItem(key, JSON.stringify(draft));
        return true;
      } catch {
        return false;
      }
    },
    forget: () => {
      try {
        storage().removeItem(key);
      } catch {}
    },
  };
}

function readDraft(kept: string | null): Draft | null {
  if (kept === null) return null;
  const draft: unknown = JSON.parse(kept);
  if (typeof draft !== 'object' || draft === null) return null;
  const { text, challenge, folder } = draft as Readonly<Record<string, unknown>>;
  if (typeof text !== 'string' || typeof challenge !== 'string' || typeof folder !== 'string') return null;
  return { text, challenge, folder };
}
