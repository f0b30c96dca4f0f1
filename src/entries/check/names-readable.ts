import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { nodeAt } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';

/** Alphabets with letters that look like each other's (Unicode Technical Standard #39, 5.1, on single-script texts). */
const alphabets = ['Latin', 'Greek', 'Cyrillic', 'Armenian', 'Cherokee'].map((name) => ({
  name,
  letter: new RegExp(`\\p{Script=${name}}`, 'u'),
}));

/** What is drawn as nothing, but for the two joiners, which some languages and pictures need. */
const unseen = /[\u00AD\u115F\u1160\u180E\u2800\u3164\uFFA0]|(?![\u200C\u200D])\p{Cf}/u;

/** Names that look like other names than they are: a word of two alphabets, or a character that cannot be seen. */
export function checkNamesReadable(source: SourceDocument): Problem[] {
  return namesIn(source).flatMap(({ path, text }) => {
    const hidden = unseen.exec(text)?.[0];
    const word = (text.match(/\p{L}+/gu) ?? []).find((letters) => alphabetsOf(letters).length > 1);
    if (hidden === undefined && word === undefined) return [];
    const what =
      hidden !== undefined
        ? `holds a character that cannot be seen (U+${(hidden.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')})`
        : `has letters of the alphabets ${alphabetsOf(word ?? '').join(' and ')} in one word`;
    return [
      problemAt(source, path, 'value', 'name-hard-to-read', {
        message: `\`${path.at(-1)}\` ${what}, so it cannot be told from others or searched for. If a slip of the keyboard put it there, write the name anew.`,
        found: text,
        accepted: 'letters of one alphabet in a word',
      }),
    ];
  });
}

function alphabetsOf(letters: string): string[] {
  return alphabets.filter(({ letter }) => letter.test(letters)).map(({ name }) => name);
}

/** What the aircraft, its builders and their clubs are called; or the builder of a file of their own. */
function namesIn(source: SourceDocument): { readonly path: Path; readonly text: string }[] {
  const builders = nodeAt(source, ['builder']);
  const each =
    builders?.kind === 'list' ? builders.items.map((_, index) => ['builder', index]) : [['builder']];
  const paths: Path[] = [
    ['name'],
    ['club'],
    ...each.flatMap((at) => [
      [...at, 'name'],
      [...at, 'club'],
    ]),
  ];
  return paths.flatMap((path) => {
    const node = nodeAt(source, path);
    return node?.kind === 'scalar' && node !== builders ? [{ path, text: node.text }] : [];
  });
}
