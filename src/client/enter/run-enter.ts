import type { Path, Plain } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { withBody } from './body-of.ts';
import { withProblems, withWordsChecked } from './checked.ts';
import { checkedBesideSite } from './checked-beside-site.ts';
import { type Draft, draftStore } from './draft.ts';
import { emptyFields } from './empty-fields.ts';
import { emptyEntry, entered } from './entered.ts';
import { formView } from './form-view.ts';
import { handInView } from './hand-in-view.ts';
import { idOf } from './id-of.ts';
import { addNamed, addPart, removePart, takeOffer, type Writer } from './list-actions.ts';
import { mendView } from './mend-view.ts';
import { openAtAddress } from './open-at-address.ts';
import { readTextFile } from './read-text-file.ts';
import { sideView } from './side-view.ts';
import type { EnterSite } from './site-data.ts';
import { typedIn } from './typed-in.ts';
import { typing } from './typing.ts';
import { listsOf } from './value-at.ts';
import { withField } from './with-field.ts';

/** Where a change was made: what stands there is left as it is. */
type From = 'fields' | 'text' | 'body' | 'folder' | 'elsewhere';

/** How long a sentence about what was just done stays in view, ms. */
const inView = 6000;

/**
 * The form for an entry. Its state is the text of the file: every field shows what stands there, and every change of a
 * field is a change of the text. Nothing is sent anywhere.
 */
export function runEnter(form: HTMLElement): void {
  const site: EnterSite = JSON.parse(form.dataset.site ?? '{}');
  const part = <T extends HTMLElement>(selector: string): T => {
    const found = form.querySelector<T>(selector);
    if (found === null) throw new Error(`The page has no ${selector}.`);
    return found;
  };
  const store = draftStore(() => localStorage, location.pathname);
  const textField = part<HTMLTextAreaElement>('#text-of-file');
  const bodyField = part<HTMLTextAreaElement>('#body');
  const folderField = part<HTMLInputElement>('#folder');
  const challengeField = form.querySelector<HTMLSelectElement>('#challenge');
  const fileField = part<HTMLInputElement>('#open');
  const takeBack = part<HTMLButtonElement>('.take-back');

  let state = entered({ text: emptyEntry, challenge: challengeField?.value ?? '', folder: '' });
  let before: Draft | null = null;
  let withPart: Draft | null = null;
  let fresh: ReturnType<typeof setTimeout> | undefined;

  const { settle } = typing(form, takenFrom);
  const view = formView(form, () => {
    settle();
    return state.readable;
  });
  const mend = mendView(form, textField, view);
  const showSide = sideView(part('.side-figures'), site);
  const showHandIn = handInView(form, site, textField, tell);
  const writer: Writer = {
    plain: () => state.readable,
    put,
    redraw: () => {
      view.show(state.readable, true);
      mend.again();
    },
    begin: mend.begin,
    tell,
  };

  function tell(sentence: string): void {
    const told = part('.told');
    told.textContent = sentence;
    // It stays in view for a while, wherever on the page one is; then it lies over nothing any more.
    told.classList.toggle('fresh', sentence !== '');
    clearTimeout(fresh);
    fresh = setTimeout(() => told.classList.remove('fresh'), inView);
  }

  function take(draft: Draft, from: From): void {
    state = entered(draft, state.readable);
    tell('');
    for (const told of form.querySelectorAll('.removed')) told.remove();
    part('.kept-told').textContent = store.keep(draft) ? say.draftNone : say.draftRefused;
    show(from);
  }

  function show(from: From): void {
    const { draft, now, readable, folder } = state;
    if (from !== 'text') textField.value = draft.text;
    if (from !== 'body' && now.source !== null) bodyField.value = now.source.body;
    if (from !== 'folder') folderField.value = folder;
    const broken = part('.broken');
    broken.hidden = now.source !== null;
    broken.textContent = now.source === null ? say.unreadable(now.problems[0]?.message ?? '') : '';
    view.show(readable, from === 'text' || from === 'elsewhere');
    void showChecked();
  }

  async function showChecked(): Promise<void> {
    const shown = state;
    const challenge = site.challenges.find(({ id }) => id === shown.draft.challenge) ?? null;
    const tellLeft = (left: number) => showHandIn({ ...shown, text: shown.draft.text, challenge, left });
    for (const asked of form.querySelectorAll<HTMLElement>('[data-asked-by]'))
      asked.hidden = asked.dataset.askedBy !== challenge?.id;
    const atOnce = checkedBesideSite(shown.now, site, challenge);
    tellLeft(mend.show(atOnce));
    const [ofWords, more] = await Promise.all([
      withWordsChecked(atOnce),
      showSide(shown.draft.text, shown.now, challenge),
    ]);
    const now = withProblems(ofWords, more);
    // Whoever typed on meanwhile is answered by that.
    if (state === shown && now !== atOnce) tellLeft(mend.show(now));
  }

  /** Puts a value in a field of the text, or says why it cannot be; the field keeps what was typed. */
  function put(path: Path, value: Plain | null): void {
    const { draft, now } = state;
    const put = withField(draft.text, now, path, value);
    if (!put.ok) {
      refuse(path, put.why);
      return;
    }
    if (put.text === draft.text) {
      // While letters were being composed the fields were left as they were.
      view.show(state.readable, false);
      mend.again();
      return;
    }
    for (const list of listsOf(path)) view.end(list);
    take({ ...draft, text: put.text }, 'fields');
  }

  function refuse(path: Path, why: string): void {
    tell(why);
    const sentence = document.createElement('p');
    sentence.className = 'problem error';
    sentence.textContent = why;
    document.getElementById(idOf(path, 'problems'))?.replaceChildren(sentence);
  }

  function takeText(): void {
    // A text field knows line feeds only.
    const breaks = state.draft.text.includes('\r\n') ? '\r\n' : '\n';
    const text = textField.value.replace(/\r?\n/g, breaks);
    if (text !== state.draft.text) take({ ...state.draft, text }, 'text');
  }

  function takeBody(): void {
    const { draft, now } = state;
    if (now.source === null) tell(say.unreadable(now.problems[0]?.message ?? ''));
    else take({ ...draft, text: withBody(draft.text, now.source, bodyField.value) }, 'body');
  }

  /** Shows a challenge as the one that is meant, where it is offered, and gives the one that is. */
  function meant(challenge: string): string {
    if (challengeField === null) return challenge;
    if (site.challenges.some(({ id }) => id === challenge)) challengeField.value = challenge;
    const rules = challengeField.selectedOptions[0]?.dataset.rules;
    if (rules !== undefined) form.querySelector('.rules-link')?.setAttribute('href', rules);
    return challengeField.value;
  }

  function takeChallenge(challenge: string): void {
    take({ ...state.draft, challenge: meant(challenge) }, 'elsewhere');
  }

  /** Reads what stands in a field, and gives what is to be done with it; `done` where its builder has left it. */
  function takenFrom(field: Element, done: boolean): () => void {
    if (field === textField) return takeText;
    if (field === bodyField) return takeBody;
    if (field === folderField)
      return () => take({ ...state.draft, folder: folderField.value.trim() }, done ? 'elsewhere' : 'folder');
    const typed = typedIn(field, form);
    return () => {
      if (typed === null) return;
      // What was emptied may be typed anew: it is taken out once the field is left.
      if (!done && (typed.value === null || typed.whenLeft === true)) return;
      if (typed.refused === undefined) put(typed.path, typed.value);
      else if (done) refuse(typed.path, typed.refused);
    };
  }

  /** Puts another entry in the place of this one, which can be taken back. */
  function replace(next: Draft, sentence: string): void {
    before = state.draft;
    takeBack.hidden = false;
    mend.reset();
    view.foldAll();
    take({ ...next, challenge: meant(next.challenge) }, 'elsewhere');
    tell(sentence);
  }

  async function openFile(): Promise<void> {
    const file = fileField.files?.[0];
    if (file === undefined) return;
    const text = await readTextFile(file);
    fileField.value = '';
    if (text === null) tell(say.notText(file.name));
    else replace({ ...state.draft, text, folder: '' }, say.opened(file.name));
  }

  form.addEventListener('change', ({ target }) => {
    if (target !== challengeField && target !== fileField) return;
    settle();
    if (target === fileField) void openFile();
    else takeChallenge(challengeField?.value ?? '');
  });
  form.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest('button') : null;
    const { add, remove, putBack, addNamed: named, empty, to, line, write, value } = button?.dataset ?? {};
    if (add !== undefined) addPart(view, writer, JSON.parse(add));
    if (remove !== undefined) {
      withPart = state.draft;
      removePart(view, writer, JSON.parse(remove));
    }
    if (putBack !== undefined && withPart !== null) {
      take(withPart, 'elsewhere');
      view.reveal(JSON.parse(putBack));
      tell(say.takenBack);
    }
    if (named !== undefined) addNamed(JSON.parse(named));
    if (empty !== undefined) emptyFields(writer, JSON.parse(empty));
    if (write !== undefined && value !== undefined)
      takeOffer(view, writer, JSON.parse(write), JSON.parse(value));
    if (to !== undefined) mend.leadTo(JSON.parse(to), Number(line));
  });
  form.addEventListener('redrawn', mend.again);
  part('.bar-mend').addEventListener('click', () => {
    if (!mend.leadToNext()) folderField.focus();
  });
  part('.throw-away').addEventListener('click', () => {
    replace({ ...state.draft, text: emptyEntry, folder: '' }, say.thrownAway);
    store.forget();
  });
  takeBack.addEventListener('click', () => {
    if (before === null) return;
    replace(before, say.takenBack);
    takeBack.hidden = true;
    part('.throw-away').focus();
  });

  const kept = store.read();
  form.hidden = false;
  if (kept === null) show('elsewhere');
  else {
    state = entered(kept);
    takeChallenge(kept.challenge);
    if (kept.text !== emptyEntry) tell(say.draftThere);
  }
  const draft = () => {
    settle();
    return state.draft;
  };
  void openAtAddress(form, { draft, choose: takeChallenge, replace, tell });
}
