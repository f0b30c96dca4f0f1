import { nearestSlug } from '../../entries/folder/slug-rules.ts';
import type { Path, Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';
import { enter as say } from '../../words/enter.ts';
import { foldedLetters } from '../board/folded-letters.ts';
import { html } from '../compare/html.ts';
import { withBody } from './body-of.ts';
import { type Checked, checked } from './checked.ts';
import { type Draft, draftStore } from './draft.ts';
import { formView } from './form-view.ts';
import { handInView } from './hand-in-view.ts';
import { idOf } from './id-of.ts';
import { nextNumber } from './next-number.ts';
import { placedProblems, problemList, tellProblems } from './problems-view.ts';
import type { EnterSite } from './site-data.ts';
import { withField } from './with-field.ts';

/** An entry in which nothing is written yet. */
const emptyEntry = '---\n---\n';

/** How long one is let type before what is typed is looked at, ms. */
const pause = 300;

/**
 * The form for an entry. Its state is the text of the file: every field shows what stands there, and every change of a
 * field is a change of the text. Nothing is sent anywhere.
 */
export function runEnter(form: HTMLFormElement): void {
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

  let draft: Draft = { text: emptyEntry, challenge: challengeField?.value ?? '', folder: '' };
  let before: Draft | null = null;
  let now: Checked = checked(draft.text, address());
  /** The fields as they stood when the text could last be read. */
  let readable: Plain = now.plain ?? {};
  let tellGaps = false;
  /** The field to which the builder was led last. */
  let lastMended = '';
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const view = formView(form, () => readable);
  const showHandIn = handInView(form, site, textField, tell);

  function tell(sentence: string): void {
    part('.told').textContent = sentence;
  }

  function challenge() {
    return site.challenges.find(({ id }) => id === draft.challenge) ?? null;
  }

  function nameWritten(): string {
    const name = isMap(readable) ? readable.name : undefined;
    return typeof name === 'string' ? name : '';
  }

  /** The folder that was chosen, else the one that follows from the name. */
  function folder(): string {
    return draft.folder !== '' ? draft.folder : (nearestSlug(foldedLetters(nameWritten())) ?? '');
  }

  function address() {
    return { challenge: draft.challenge, id: draft.folder };
  }

  /** Takes a new state: `from` is where it was changed, which is left as it is. */
  function take(next: Draft, from: 'fields' | 'text' | 'body' | 'folder' | 'elsewhere'): void {
    draft = next;
    now = checked(draft.text, address());
    if (now.plain !== null) readable = now.plain;
    part('.kept-told').textContent = store.keep(draft) ? say.draftNone : say.draftRefused;
    show(from);
  }

  function show(from: 'fields' | 'text' | 'body' | 'folder' | 'elsewhere'): void {
    if (from !== 'text') textField.value = draft.text;
    if (from !== 'body' && now.source !== null) bodyField.value = now.source.body;
    if (from !== 'folder') folderField.value = folder();
    const broken = part('.broken');
    broken.hidden = now.source !== null;
    broken.textContent = now.source !== null ? '' : say.unreadable(now.problems[0]?.message ?? '');
    view.show(readable, from === 'text' || from === 'elsewhere');
    showProblems();
    void showSide();
  }

  function showProblems(): void {
    const placed = placedProblems(now);
    tellProblems(form, now.source === null ? [] : placed, tellGaps);
    const errors = placed.filter(({ problem }) => problem.severity === 'error');
    const gaps = errors.filter(({ isGap }) => isGap).length;
    const mistakes = errors.length - gaps;
    const doubts = placed.length - errors.length;
    part('.mend-count').textContent =
      errors.length === 0
        ? [say.isFine, ...(doubts === 0 ? [] : [say.doubts(doubts)])].join(' ')
        : [
            ...(mistakes === 0 ? [] : [say.toMend(mistakes)]),
            ...(gaps === 0 ? [] : [say.toFill(gaps)]),
            ...(doubts === 0 ? [] : [say.doubts(doubts)]),
          ].join(' · ');
    part('.bar-mend').textContent = errors.length === 0 ? say.toMend(0) : say.barLeft(errors.length);
    const list = problemList(placed);
    if (part('.mend-list').innerHTML !== list) part('.mend-list').innerHTML = list;
    showHandIn({
      text: draft.text,
      name: nameWritten(),
      folder: folder(),
      challenge: challenge(),
      left: errors.length,
    });
  }

  /** Figures and drawing come once there is something to draw. */
  async function showSide(): Promise<void> {
    const { entry } = now;
    const box = part('.side-figures');
    const { sideMarkup } = entry === null ? { sideMarkup: null } : await import('./side-markup.ts');
    // Whoever typed on meanwhile is answered by that.
    if (now.entry !== entry) return;
    const markup =
      entry === null || sideMarkup === null
        ? html`<p class="aside">${say.noDrawingYet}</p>`.text
        : sideMarkup(entry, site, challenge());
    if (box.innerHTML !== markup) box.innerHTML = markup;
  }

  /** Puts a value in a field of the text, or says why it cannot be; the field keeps what was typed. */
  function put(path: Path, value: Plain | null): void {
    const put = withField(draft.text, now, path, value);
    if (!put.ok) {
      refuse(path, put.why);
      return;
    }
    if (put.text === draft.text) return;
    for (const list of listsOf(path)) view.end(list);
    take({ ...draft, text: put.text }, 'fields');
  }

  function refuse(path: Path, why: string): void {
    const room = document.getElementById(idOf(path, 'problems'));
    tell(why);
    if (room === null) return;
    const sentence = document.createElement('p');
    sentence.className = 'problem error';
    sentence.textContent = why;
    room.replaceChildren(sentence);
  }

  /** What stands in a field, as it is to be written; null for nothing. */
  function typedIn(field: Element): { readonly path: Path; readonly value: Plain | null } | null {
    if (field instanceof HTMLInputElement && field.dataset.among !== undefined) {
      const path: Path = JSON.parse(field.dataset.among);
      const boxes = form.querySelectorAll<HTMLInputElement>('input[data-among]:checked');
      const words = [...boxes]
        .filter((box) => box.dataset.among === field.dataset.among)
        .map((box) => box.value);
      return { path, value: words.length === 0 ? null : words };
    }
    if (
      !(field instanceof HTMLInputElement) &&
      !(field instanceof HTMLSelectElement) &&
      !(field instanceof HTMLTextAreaElement)
    )
      return null;
    if (field.dataset.put === undefined) return null;
    const path: Path = JSON.parse(field.dataset.put);
    if (field instanceof HTMLInputElement && field.type === 'checkbox')
      return { path, value: field.checked ? field.value : null };
    const written = field.value.replace(/\s+/g, ' ').trim();
    return { path, value: written === '' ? null : written };
  }

  function putFrom(field: Element): void {
    const read = typedIn(field);
    if (read !== null) put(read.path, read.value);
  }

  form.addEventListener('submit', (event) => event.preventDefault());

  form.addEventListener('input', (event) => {
    const { target } = event;
    if (!(target instanceof Element) || (event instanceof InputEvent && event.isComposing)) return;
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      if (target === textField) return takeText();
      if (target === bodyField) return takeBody();
      if (target === folderField) return take({ ...draft, folder: folderField.value.trim() }, 'folder');
      const read = typedIn(target);
      // What was emptied may be typed anew: it is taken out once the field is left.
      if (read !== null && read.value !== null) put(read.path, read.value);
    }, pause);
  });

  form.addEventListener('change', ({ target }) => {
    if (!(target instanceof Element)) return;
    clearTimeout(waiting);
    if (target === textField) return takeText();
    if (target === bodyField) return takeBody();
    if (target === folderField) return take({ ...draft, folder: folderField.value.trim() }, 'elsewhere');
    if (target === challengeField) return takeChallenge();
    if (target === fileField) return void openFile();
    // The cursor is still on its way to the next field: what is drawn anew must not take that away.
    setTimeout(() => putFrom(target), 0);
  });

  form.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && event.target instanceof HTMLInputElement) {
      event.preventDefault();
      putFrom(event.target);
    }
  });

  function takeText(): void {
    // A text field knows line feeds only.
    const breaks = draft.text.includes('\r\n') ? '\r\n' : '\n';
    const text = textField.value.replace(/\r?\n/g, breaks);
    if (text !== draft.text) take({ ...draft, text }, 'text');
  }

  function takeBody(): void {
    if (now.source === null) tell(say.unreadable(now.problems[0]?.message ?? ''));
    else take({ ...draft, text: withBody(draft.text, now.source, bodyField.value) }, 'body');
  }

  function takeChallenge(): void {
    if (challengeField === null) return;
    const rules = challengeField.selectedOptions[0]?.dataset.rules;
    if (rules !== undefined) form.querySelector('.rules-link')?.setAttribute('href', rules);
    take({ ...draft, challenge: challengeField.value }, 'elsewhere');
  }

  async function openFile(): Promise<void> {
    const file = fileField.files?.[0];
    if (file === undefined) return;
    let text: string;
    try {
      // The byte order mark is kept: it is one of the letters that are not touched.
      text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    } catch {
      tell(say.notText(file.name));
      return;
    }
    replace({ ...draft, text, folder: '' });
    fileField.value = '';
    tell(say.opened(file.name));
  }

  /** Puts another entry in the place of this one, which can be taken back. */
  function replace(next: Draft): void {
    before = draft;
    takeBack.hidden = false;
    tellGaps = false;
    view.foldAll();
    take(next, 'elsewhere');
  }

  part('.throw-away').addEventListener('click', () => {
    replace({ ...draft, text: emptyEntry, folder: '' });
    store.forget();
    tell(say.thrownAway);
  });

  takeBack.addEventListener('click', () => {
    if (before === null) return;
    const last = before;
    before = null;
    takeBack.hidden = true;
    part('.throw-away').focus();
    view.foldAll();
    take(last, 'elsewhere');
    tell(say.takenBack);
  });

  form.addEventListener('click', ({ target }) => {
    const button = target instanceof Element ? target.closest('button') : null;
    if (button === null) return;
    const { add, remove, addNamed, to } = button.dataset;
    if (add !== undefined) addTo(JSON.parse(add));
    if (remove !== undefined) removeAt(JSON.parse(remove));
    if (addNamed !== undefined) addNamedTo(JSON.parse(addNamed), button.id);
    if (to !== undefined) goTo(JSON.parse(to), Number(button.dataset.line));
    if (button.classList.contains('bar-mend')) goToNext();
  });

  function addTo(list: Path): void {
    const written = valueAt(readable, list);
    const count = written === undefined ? 0 : isList(written) ? written.length : 1;
    const item = [...list, count];
    view.unfold(item);
    // A flight has its number from the start; another part is written with the first of its fields.
    if (list.at(-1) === 'flights') put([...item, 'number'], nextNumber(written));
    else {
      view.begin(list);
      show('fields');
    }
    view.reveal([...item, list.at(-1) === 'flights' ? 'date' : '']);
  }

  function removeAt(item: Path): void {
    const list = item.slice(0, -1);
    const wasBegun = view.end(list);
    const isWritten = valueAt(readable, item) !== undefined || !wasBegun;
    if (isWritten) put(item, null);
    else show('fields');
    view.show(readable, true);
    showProblems();
    document.getElementById(idOf(list, 'add'))?.focus();
    tell(say.removed(say.itemNumber(say.item[String(list.at(-1))] ?? '', Number(item.at(-1)) + 1)));
  }

  function addNamedTo(map: Path, id: string): void {
    const [name, value] = ['name', 'value'].map((field) => document.getElementById(`${id}-${field}`));
    if (!(name instanceof HTMLInputElement) || !(value instanceof HTMLInputElement)) return;
    const [key, text] = [name.value.trim(), value.value.trim()];
    if (key !== '' && text !== '') put([...map, key], text);
    (key !== '' && text === '' ? value : (document.getElementById(`${id}-name`) ?? name)).focus();
  }

  function goTo(path: Path, line: number): void {
    tellGaps = true;
    if (now.source === null || path.length === 0) {
      textField.focus();
      const start =
        draft.text
          .split('\n')
          .slice(0, line - 1)
          .join('\n').length + (line > 1 ? 1 : 0);
      textField.setSelectionRange(start, start);
      textField.scrollIntoView({ block: 'center' });
    } else view.reveal(path);
    showProblems();
  }

  /** The next thing to mend behind the field in which the cursor is. */
  function goToNext(): void {
    const errors = placedProblems(now).filter(({ problem }) => problem.severity === 'error');
    const last = errors.findIndex(({ path }) => idOf(path) === lastMended);
    const next = errors[last + 1] ?? errors[0];
    if (next === undefined) {
      part('#folder').focus();
      return;
    }
    lastMended = idOf(next.path);
    goTo(next.path, next.problem.line);
  }

  form.addEventListener('redrawn', showProblems);

  const kept = store.read();
  if (kept !== null) {
    draft = site.challenges.some(({ id }) => id === kept.challenge)
      ? kept
      : { ...kept, challenge: draft.challenge };
    if (challengeField !== null) challengeField.value = draft.challenge;
    takeChallenge();
    tell(say.draftThere);
  }
  form.hidden = false;
  take(draft, 'elsewhere');
}

/** The lists through which a path leads, outermost first. */
function listsOf(path: Path): Path[] {
  return path.flatMap((step, at) => (typeof step === 'number' ? [path.slice(0, at)] : []));
}

function valueAt(plain: Plain, path: Path): Plain | undefined {
  let node: Plain | undefined = plain;
  for (const step of path) {
    if (node === undefined) return undefined;
    if (isList(node)) node = typeof step === 'number' ? node[step] : undefined;
    else if (isMap(node)) node = Object.hasOwn(node, String(step)) ? node[String(step)] : undefined;
    else return step === 0 ? node : undefined;
  }
  return node;
}
