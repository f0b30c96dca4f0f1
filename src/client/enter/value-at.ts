import type { Path, Plain } from '../../entries/source/source.ts';
import { isList, isMap } from '../../entries/write/yaml-text.ts';

/** What is written at a path, where one value may stand for a list of it; undefined where nothing is. */
export function valueAt(plain: Plain, path: Path): Plain | undefined {
  let node: Plain | undefined = plain;
  for (const step of path) {
    if (node === undefined || node === '') return undefined;
    if (isList(node)) node = typeof step === 'number' ? node[step] : undefined;
    else if (step === 0) continue;
    else node = isMap(node) && Object.hasOwn(node, String(step)) ? node[String(step)] : undefined;
  }
  return node;
}

/** How many items are written in a list. */
export function countAt(plain: Plain, list: Path): number {
  const written = valueAt(plain, list);
  if (written === undefined || written === '') return 0;
  return isList(written) ? written.length : 1;
}

/** The lists through which a path leads, outermost first. */
export function listsOf(path: Path): Path[] {
  return path.flatMap((step, at) => (typeof step === 'number' ? [path.slice(0, at)] : []));
}
