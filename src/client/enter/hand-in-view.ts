import { slugFault } from '../../entries/folder/slug-rules.ts';
import { enter as say } from '../../words/enter.ts';
import { copyText } from './copy-text.ts';
import { mailTo, pathOfEntry, proposedFile, uploadPage } from './hand-in.ts';
import type { EnterChallenge, EnterSite } from './site-data.ts';

/** What is to be handed in. */
export interface HandedIn {
  readonly text: string;
  readonly name: string;
  readonly folder: string;
  readonly challenge: EnterChallenge | null;
  /** How many mistakes and gaps are left. */
  readonly left: number;
}

/** The ways in which the file leaves the page, all of them by the builder's own hand. */
export function handInView(
  form: HTMLElement,
  site: EnterSite,
  textField: HTMLTextAreaElement,
  tell: (sentence: string) => void,
): (now: HandedIn) => void {
  const part = <T extends HTMLElement>(selector: string) => form.querySelector<T>(selector);
  let current: HandedIn = { text: '', name: '', folder: '', challenge: null, left: 0 };

  async function copy(): Promise<void> {
    tell((await copyText(current.text, textField)) ? say.copied : say.notCopied);
  }

  part('.copy')?.addEventListener('click', () => void copy());
  part('.download')?.addEventListener('click', () => {
    const address = URL.createObjectURL(new Blob([current.text], { type: 'text/markdown;charset=utf-8' }));
    const link = document.createElement('a');
    link.href = address;
    link.download = 'entry.md';
    link.click();
    URL.revokeObjectURL(address);
  });
  for (const selector of ['.propose', '.mail'])
    part<HTMLAnchorElement>(selector)?.addEventListener('click', () => void copy());

  return (now) => {
    current = now;
    const { text, name, folder, challenge, left } = now;
    const fault = folder === '' ? say.slugMissing : (slugFault(folder)?.fields.message ?? null);
    const isThere = challenge?.taken.includes(folder) === true;
    const path = pathOfEntry(challenge?.id ?? 'challenge', folder === '' ? 'name' : folder);
    write('#folder-told', fault ?? (isThere ? say.slugTaken(`${challenge?.id}/${folder}`) : ''));
    part('#folder')?.toggleAttribute('aria-invalid', fault !== null && folder !== '');
    write('.place', path);
    const notYet = part('.not-yet');
    if (notYet !== null) {
      notYet.hidden = left === 0;
      notYet.textContent = left === 0 ? '' : say.notYet(left);
    }
    const proposal = proposedFile(site.repository, path, text, isThere);
    if (proposal !== null) {
      part<HTMLAnchorElement>('.propose')?.setAttribute('href', proposal.address);
      write(
        '.propose-told',
        isThere ? say.proposeEdit : proposal.filled ? say.proposeFilled : say.proposeEmpty,
      );
    }
    const upload = part<HTMLAnchorElement>('.upload');
    const uploadTo = uploadPage(site.repository, path);
    if (upload !== null && uploadTo !== null) {
      upload.hidden = false;
      upload.href = uploadTo;
    }
    if (site.sendTo !== null) {
      const mail = mailTo(site.sendTo, say.mailSubject(name || folder, challenge?.title ?? ''), text);
      part<HTMLAnchorElement>('.mail')?.setAttribute('href', mail.address);
      write('.mail-told', mail.filled ? say.mailShort : say.mailLong);
    }
  };

  function write(selector: string, text: string): void {
    const place = part(selector);
    if (place !== null && place.textContent !== text) place.textContent = text;
  }
}
