import { didYouMean } from '../problems/did-you-mean.ts';
import { leaf, type Reading, refused, taken } from './leaf.ts';

/** One of a closed set of words. */
export function word<const Word extends string>(words: readonly Word[]) {
  return leaf({ kind: 'word', words }, (text) => readWord(text, words));
}

/** Reads one of a closed set of words; what is near to one of them is asked about, never taken for it. */
function readWord<Word extends string>(text: string, words: readonly Word[]): Reading<Word> {
  const known = words.find((candidate) => candidate === text);
  if (known !== undefined) return taken(known);
  const near = didYouMean(text, words);
  return refused(
    'unknown-word',
    `"${text}" is not a word known here.`,
    text,
    inWords(words),
    near ?? undefined,
  );
}

/** `a, b or c`. */
export function inWords(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}

/** `true` or `false`; `yes` and `no` mean the same. */
export function yesNo() {
  return leaf({ kind: 'yes-no' }, (text): Reading<boolean> => {
    const answer = answers.get(text.toLowerCase());
    if (answer !== undefined) return taken(answer);
    return refused('not-yes-or-no', `"${text}" is neither yes nor no.`, text, 'true or false');
  });
}

const answers: ReadonlyMap<string, boolean> = new Map([
  ['true', true],
  ['yes', true],
  ['false', false],
  ['no', false],
]);
