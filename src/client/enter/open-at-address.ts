import { enter as say } from '../../words/enter.ts';
import { askedOf } from './asked-of-address.ts';
import type { Draft } from './draft.ts';
import { emptyEntry, entered } from './entered.ts';
import { readTextFile } from './read-text-file.ts';

/** What the form lets its address do. */
export interface AskedForm {
  /** What stands in it now. */
  readonly draft: () => Draft;
  readonly choose: (challenge: string) => void;
  /** Puts another entry in the place of this one, which can be taken back. */
  readonly replace: (next: Draft, sentence: string) => void;
  readonly tell: (sentence: string) => void;
}

/**
 * Does what the address asks for: chooses a challenge for a new aircraft, or opens the file of one that this site shows, as if
 * it had been chosen from the disk. What somebody has written in the form gives way only where they say so. Once it is done the
 * address asks no more: the page loaded anew shows what was written since.
 */
export async function openAtAddress(form: HTMLElement, asked: AskedForm): Promise<void> {
  const { challenge, entry } = askedOf(location.search);
  if (challenge !== null) {
    if (asked.draft().text === emptyEntry) asked.choose(challenge);
    askNoMore();
  }
  if (entry === null) return;
  const text = await textAt(`${form.dataset.files}${entry.challenge}/${entry.entry}.md`);
  if (text === null) {
    asked.tell(say.notToOpen(`${entry.challenge}/${entry.entry}`));
    return;
  }
  const next = { text, challenge: entry.challenge, folder: entry.entry };
  const name = entered(next).name;
  const open = (): void => {
    askNoMore();
    asked.replace(next, say.opened(name));
  };
  const now = asked.draft();
  if (now.text === emptyEntry || now.text === text) open();
  else {
    asked.tell('');
    const isSame = now.challenge === next.challenge && now.folder === next.folder;
    askFirst(form, isSame ? say.askSame(name) : say.askOther(entered(now).name, name), open);
  }
}

function askNoMore(): void {
  history.replaceState(history.state, '', location.pathname + location.hash);
}

/** The text of a file of this site, letter for letter; null where it cannot be had. */
async function textAt(address: string): Promise<string | null> {
  try {
    const answer = await fetch(address);
    return answer.ok ? readTextFile(await answer.blob()) : null;
  } catch {
    return null;
  }
}

function askFirst(form: HTMLElement, question: string, open: () => void): void {
  const box = form.querySelector<HTMLElement>('.ask-first');
  const words = box?.querySelector('p');
  if (box === null || !words) return;
  box.hidden = false;
  words.textContent = question;
  box.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    box.hidden = true;
    if (target.matches('.open-file')) open();
    else askNoMore();
    form.querySelector<HTMLElement>('#challenge')?.focus();
  });
}
