import { entry as schema } from '../../entries/schema/entry.ts';
import { mayBeAbsent } from '../../entries/schema/field-at.ts';
import type { Path } from '../../entries/source/source.ts';
import type { Entry } from '../../model/entry.ts';
import { type Checked, checked } from './checked.ts';
import { placedProblems } from './problems-view.ts';
import { valueAt } from './value-at.ts';
import { withField } from './with-field.ts';

/** What stands in for fields on which neither drawing nor figures rest. */
const standIns: Readonly<Record<string, string>> = { name: '…', builder: 'nobody', control: 'free' };

/** Nobody waits longer for a drawing of what is full of mistakes. */
const mostMistakes = 12;

/**
 * What can be drawn and reckoned with of an entry that is not finished: without the fields, or the parts, in which there
 * are mistakes or gaps. Null where too much is missing.
 */
export function sketchOf(text: string, now: Checked): Entry | null {
  let [left, of] = [text, now];
  for (let mended = 0; mended <= mostMistakes; mended += 1) {
    if (of.entry !== null) return of.entry;
    const mistake = placedProblems(of).find(({ problem }) => problem.severity === 'error');
    const next = mistake === undefined ? null : without(left, of, mistake.path);
    if (next === null || next === left) return null;
    left = next;
    of = checked(left, { challenge: '', id: '' });
  }
  return null;
}

/** The text without the smallest part around a mistake that may be absent. */
function without(text: string, now: Checked, path: Path): string | null {
  const standIn = standIns[String(path[0])];
  if (standIn !== undefined) return textOf(withField(text, now, path.slice(0, 1), standIn));
  for (let length = path.length; length > 0; length -= 1) {
    const part = path.slice(0, length);
    if (now.plain !== null && mayBeAbsent(schema, part) && valueAt(now.plain, part) !== undefined)
      return textOf(withField(text, now, part, null));
  }
  return null;
}

function textOf(put: ReturnType<typeof withField>): string | null {
  return put.ok ? put.text : null;
}
