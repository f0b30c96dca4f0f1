import type { Path, Plain } from '../../entries/source/source.ts';
import { rewrite } from '../../entries/write/rewrite.ts';
import { enter as say } from '../../words/enter.ts';
import { type Checked, entryFile } from './checked.ts';
import { puttingField } from './put-field.ts';

/** The text of an entry with a value, or nothing for null, in a field; or why that cannot be. */
export function withField(
  text: string,
  { plain, problems }: Checked,
  path: Path,
  value: Plain | null,
): { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string } {
  if (plain === null) return { ok: false, why: say.unreadable(problems[0]?.message ?? '') };
  const changes = puttingField(plain, path, value);
  if (changes === null) return { ok: false, why: say.odd };
  const rewritten = rewrite(entryFile, text, changes);
  return rewritten.ok ? rewritten : { ok: false, why: say.notPut(rewritten.why) };
}
