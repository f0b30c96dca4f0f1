import type { Path } from '../../entries/source/source.ts';
import { enter as say } from '../../words/enter.ts';
import type { Writer } from './list-actions.ts';
import { valueAt } from './value-at.ts';

/** Takes out what stands in some fields. */
export function emptyFields(writer: Writer, paths: readonly Path[]): void {
  for (const path of paths) if (valueAt(writer.plain(), path) !== undefined) writer.put(path, null);
  writer.redraw();
  writer.tell(say.emptied);
}
