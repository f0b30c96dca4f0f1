import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import { Html, html } from '../compare/html.ts';
import type { At, Control, Group } from './control.ts';
import { idOf } from './id-of.ts';
import { itemTitle } from './item-title.ts';
import { newNameOf } from './new-name.ts';

/** Which folds are open, by the ids of their paths; whatever is closed is not written out. */
export type Unfolded = ReadonlySet<string>;

const nothing = html``;

/** A field of the form with its name, its help, and room for what was understood and what is wrong. */
export function controlMarkup(control: Control, unfolded: Unfolded): Html {
  switch (control.kind) {
    case 'line':
      return labelled(control, line(control, control.written, control.path));
    case 'choice':
      return labelled(control, choice(control), false);
    case 'tick':
      return ticked(control);
    case 'ticks':
      return ticks(control);
    case 'lines':
      return lines(control);
    case 'group':
      return html`<fieldset class="parts" ${data(control.path)}><legend>${control.field.title}</legend>${help(control, false)}${room(control.path)}${inside(control, unfolded)}</fieldset>`;
    case 'items':
      return items(control, unfolded);
    case 'named':
      return named(control, unfolded);
    case 'odd':
      return html`<div class="field" ${data(control.path)}><p class="label">${control.field.title}</p><p class="aside">${say.odd}</p>${room(control.path)}</div>`;
  }
}

/** The fields of a group, first those in sight, then the others behind a fold. */
export function inside({ inSight, folded, path }: Group, unfolded: Unfolded): Html {
  return html`<div class="fields">${inSight.map((control) => controlMarkup(control, unfolded))}</div>${fold(path, folded, unfolded)}`;
}

/** Fields behind a fold that names the first of them; nothing where there are none. */
export function fold(path: Path, controls: readonly Control[], unfolded: Unfolded): Html {
  if (controls.length === 0) return nothing;
  const id = idOf(path, 'more');
  const names = controls.map(({ field }) => field.title.toLowerCase());
  const rest = names.length - say.fewNamed;
  const summary = rest > 1 ? say.moreBesides(names.slice(0, say.fewNamed), rest) : say.more(names);
  const filled = controls.filter(isFilled).length;
  return html`<details class="more" id="${id}"${opened(unfolded, id)} ${within(controls)}><summary id="${id}-head">${summary}${filled === 0 ? nothing : html` <span class="count">${say.filledIn(filled)}</span>`} <span class="to-mend"></span></summary>${unfolded.has(id) ? html`<div class="fields">${controls.map((control) => controlMarkup(control, unfolded))}</div>` : nothing}</details>`;
}

function isFilled(control: Control): boolean {
  switch (control.kind) {
    case 'group':
      return [...control.inSight, ...control.folded].some(isFilled);
    case 'items':
      return control.items.length > 0;
    case 'named':
      return control.rows.length > 0;
    case 'odd':
      return true;
    default:
      return control.written.length > 0;
  }
}

function labelled(control: At, field: Html, withExample = true): Html {
  return html`<div class="field" ${data(control.path)}><label for="${idOf(control.path)}">${name(control)}</label>${help(control, withExample)}${field}${read(control.path)}${room(control.path)}</div>`;
}

function name({ field }: At): Html {
  return html`${field.title}${field.required ? html` <span class="must">${say.needed}</span>` : nothing}`;
}

/** What the field is, with an example as one would type it here. */
function help({ path, field }: At, withExample = true, inBoxes = ''): Html {
  const example = field.example.replace(/^"(.*)"$/, '$1').replace(/^\[(.*)\]$/, '$1');
  const isPlain =
    withExample && !say.ofSite.has(String(path.at(-1))) && !/^[[{]/.test(example) && example !== '';
  const besides = say.besides[String(path.at(-1))] ?? '';
  const parts = [field.description, isPlain ? say.such(example) : '', besides, inBoxes];
  const text = parts.filter((part) => part !== '').join('. ');
  return text === '' ? nothing : html`<p class="help" id="${idOf(path, 'help')}">${text}</p>`;
}

/** What was understood, in the units of the visitor. */
function read(path: Path): Html {
  return html`<p class="reading" id="${idOf(path, 'reading')}"></p>`;
}

/** Where problems of the field are told. */
function room(path: Path): Html {
  return html`<div class="problems" id="${idOf(path, 'problems')}"></div>`;
}

function described(path: Path, ...parts: readonly string[]): Html {
  return attribute('aria-describedby', parts.map((part) => idOf(path, part)).join(' '));
}

type Line = Extract<Control, { kind: 'line' | 'lines' }>;

function line({ form, field }: Line, written: string, path: Path, label = ''): Html {
  const common = html`id="${idOf(path)}" ${data(path, 'put')} autocomplete="off" ${described(path, 'help', 'reading', 'problems')}${label === '' ? nothing : html` ${attribute('aria-label', label)}`}${field.required ? html` aria-required="true"` : nothing}`;
  if (form.kind === 'text' && form.longest > 200)
    return html`<textarea rows="2" ${common}>${written}</textarea>`;
  if (
    form.kind === 'date' &&
    form.precision !== 'month' &&
    (written === '' || /^\d{4}-\d\d-\d\d$/.test(written))
  )
    return html`<input type="date" ${common} value="${written}">`;
  const free = form.kind === 'text' ? nothing : html` spellcheck="false" autocapitalize="none"`;
  const keys =
    form.kind === 'count'
      ? html` inputmode="numeric"`
      : form.kind === 'link'
        ? html` inputmode="url"`
        : nothing;
  const list = path.at(-1) === 'batch' ? html` list="batches"` : nothing;
  return html`<input type="text" ${common}${free}${keys}${list} value="${written}">`;
}

function choice({ path, field, words, written }: Extract<Control, { kind: 'choice' }>): Html {
  const key = String(path.findLast((step) => typeof step === 'string') ?? '');
  const others = written === '' || words.includes(written) ? [] : [written];
  return html`<select id="${idOf(path)}" ${data(path, 'put')} ${described(path, 'help', 'problems')}${field.required ? html` aria-required="true"` : nothing}><option value="">${field.required ? say.choose : say.none}</option>${[...words, ...others].map((word) => html`<option value="${word}"${word === written ? html` selected` : nothing}>${words.includes(word) ? say.word(key, word) : word}</option>`)}</select>`;
}

function ticked(control: Extract<Control, { kind: 'tick' }>): Html {
  const { path, written } = control;
  const isYes = /^(?:true|yes)$/i.test(written);
  return html`<div class="field tick" ${data(path)}><label><input type="checkbox" id="${idOf(path)}" ${data(path, 'put')} value="true" ${described(path, 'help', 'problems')}${isYes ? html` checked` : nothing}> ${name(control)}</label>${help(control, false)}${path.at(-1) === 'junior' ? juniorNotice(path.slice(0, -1)) : nothing}${room(path)}</div>`;
}

/** What holds for juniors, and a way to take out what pages would leave out anyway. */
function juniorNotice(builder: Path): Html {
  const kept = [
    [...builder, 'name'],
    [...builder, 'club'],
  ];
  return html`<div class="notice when-ticked"><p>${say.junior}</p><button type="button" id="${idOf(builder, 'empty')}" ${attribute('data-empty', JSON.stringify(kept))}>${say.emptyNames}</button></div>`;
}

function ticks(control: Extract<Control, { kind: 'ticks' }>): Html {
  const { path, words, written } = control;
  const key = String(path.findLast((step) => typeof step === 'string') ?? '');
  const others = written.filter((word) => !words.includes(word));
  return html`<fieldset class="field ticks" ${data(path)} ${described(path, 'help', 'problems')}><legend>${name(control)}</legend>${help(control, false)}<div>${[...words, ...others].map((word) => html`<label><input type="checkbox" id="${idOf(path, word)}" ${data(path, 'among')} value="${word}"${written.includes(word) ? html` checked` : nothing}> ${words.includes(word) ? say.word(key, word) : word}</label>`)}</div>${room(path)}</fieldset>`;
}

function lines(control: Extract<Control, { kind: 'lines' }>): Html {
  const { path, field, written, motors } = control;
  const boxes = motors === null ? [...written, ''] : Array.from({ length: Math.max(written.length, motors) });
  const rows = boxes.map((_, index) => {
    const at = [...path, index];
    const label =
      motors !== null && boxes.length > 1
        ? say.ofItem(field.title, say.itemNumber(say.item.motors ?? '', index + 1).toLowerCase())
        : index === 0
          ? field.title
          : index === written.length
            ? say.anotherOf(field.title)
            : say.nthOf(field.title, index + 1);
    const motor =
      motors === null || boxes.length === 1
        ? nothing
        : html`<label class="which" for="${idOf(at)}">${say.itemNumber(say.item.motors ?? '', index + 1)}</label>`;
    return html`<div class="one" ${data(at)}>${motor}${line(control, written[index] ?? '', at, label)}${read(at)}${room(at)}</div>`;
  });
  return html`<fieldset class="field several" ${data(path)} ${described(path, 'help', 'problems')}><legend>${name(control)}</legend>${help(control, true, motors === null ? say.oneInEach : '')}${rows}${room(path)}</fieldset>`;
}

function named(control: Extract<Control, { kind: 'named' }>, unfolded: Unfolded): Html {
  const { path, field, rows } = control;
  const [own, value] = newNameOf(path);
  return html`<fieldset class="parts" ${data(path)}><legend>${field.title}</legend>${help(control, false)}${room(path)}<div class="fields">${rows.map((row) => controlMarkup(row, unfolded))}</div><div class="new-name" ${data(path, 'name')}><label>${say.name}<input type="text" id="${idOf(own)}" autocomplete="off"></label><label>${say.value}<input type="text" id="${idOf(value)}" autocomplete="off"></label><button type="button" id="${idOf(path, 'add')}" ${data(path, 'add-named')}>${say.addNamed(field.title)}</button>${room(own.slice(0, -1))}</div></fieldset>`;
}

/** Parts of so many fields or fewer stand open at once. */
const fewFields = 6;

function items(control: Extract<Control, { kind: 'items' }>, unfolded: Unfolded): Html {
  const { path, items: written, most, field, isBegun } = control;
  const what = say.item[String(path.at(-1))] ?? field.title;
  const full = most !== null && written.length >= most;
  const list = written.map((item, index) => {
    const title = itemTitle(what, item, index);
    const remove = html`<button type="button" class="remove" id="${idOf(item.path, 'remove')}" ${data(item.path, 'remove')}>${say.remove(say.itemNumber(what, index + 1))}</button>`;
    const inner =
      isBegun && index === written.length - 1
        ? html`<p class="help">${say.notWritten}</p>${inside(item, unfolded)}`
        : inside(item, unfolded);
    const tally = html`<span class="title">${title}</span>`;
    if (item.inSight.length + item.folded.length <= fewFields)
      return html`<fieldset class="item" ${data(item.path)}><legend>${tally}</legend>${room(item.path)}${inner}${written.length > 1 || !field.required ? remove : nothing}</fieldset>`;
    const id = idOf(item.path, 'item');
    return html`<details class="item" id="${id}"${opened(unfolded, id)} ${data(item.path)}><summary id="${id}-head">${tally} <span class="to-mend"></span></summary>${room(item.path)}${unfolded.has(id) ? html`${inner}${remove}` : nothing}</details>`;
  });
  const add = html`<button type="button" class="add" id="${idOf(path, 'add')}" ${data(path, 'add')}>${say.add(what, written.length === 0)}</button>`;
  return html`<div class="items" role="group" aria-label="${field.title}" ${data(path)}>${room(path)}${list}${full ? nothing : add}</div>`;
}

function opened(unfolded: Unfolded, id: string): Html {
  return unfolded.has(id) ? html` open` : nothing;
}

function data(path: Path, what = 'at'): Html {
  return attribute(`data-${what}`, JSON.stringify(path));
}

/** The paths that a fold hides, so that a problem of one is counted on it. */
function within(controls: readonly Control[]): Html {
  return attribute('data-holds', JSON.stringify(controls.map(({ path }) => path)));
}

function attribute(key: string, value: string): Html {
  return new Html(`${key}="${html`${value}`.text}"`);
}
