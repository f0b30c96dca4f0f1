import type { CST } from 'yaml';
import type { ProblemCode } from '../problems/problem-codes.ts';
import { limits } from './limits.ts';

/** Something YAML allows and this format does not; offsets are those of the YAML text. */
export interface Refused {
  readonly code: ProblemCode;
  readonly start: number;
  readonly end: number;
  readonly message: string;
  readonly found: string;
  readonly accepted: string;
}

/** What matters has been said after this many. */
const mostRefused = 20;

/** A collection or what stands in one, with how many collections are around it. */
interface Visit {
  readonly token: CST.Token;
  readonly depth: number;
}

/**
 * Anchors, aliases, tags, directives, further documents and too deep a nesting, found in the tokens, before anything is built
 * from them. Works on a list of its own instead of calling itself: a text of brackets alone cannot exhaust the stack.
 */
export function refusedTokens(tokens: readonly CST.Token[]): Refused[] {
  const refused: Refused[] = [];
  const open: Visit[] = [];
  let ended = false;
  let tooDeep = false;
  for (const token of tokens) {
    if (token.type === 'directive') refused.push(refusal('yaml-syntax', token));
    else if (token.type === 'doc-end') {
      if (!ended) refused.push(refusal('second-document', token));
      ended = true;
    } else if (token.type === 'document') {
      refused.push(...refusedProperties(token.start));
      if (token.value) open.push({ token: token.value, depth: 1 });
    }
  }
  for (let visit = open.pop(); visit !== undefined; visit = open.pop()) {
    const { token, depth } = visit;
    if (token.type === 'alias') refused.push(refusal('yaml-anchor', token));
    if (token.type === 'block-scalar') refused.push(...refusedProperties(token.props));
    if (!('items' in token)) continue;
    if (depth > limits.nesting) {
      if (!tooDeep) refused.push(refusal('nested-too-deeply', { offset: token.offset, source: '' }));
      tooDeep = true;
      continue;
    }
    for (const item of token.items) {
      refused.push(...refusedProperties(item.start));
      if (item.sep) refused.push(...refusedProperties(item.sep));
      if (item.key) open.push({ token: item.key, depth: depth + 1 });
      if (item.value) open.push({ token: item.value, depth: depth + 1 });
    }
  }
  return refused.sort((a, b) => a.start - b.start).slice(0, mostRefused);
}

/** Where the last text in quotes begins, the one that runs to the end of the file where its quote is never closed. */
export function lastQuote(tokens: readonly CST.Token[]): number | null {
  let last: number | null = null;
  const open: (CST.Token | null | undefined)[] = [...tokens];
  for (let token = open.pop(); token !== undefined; token = open.pop()) {
    if (token === null) continue;
    if (token.type === 'single-quoted-scalar' || token.type === 'double-quoted-scalar')
      last = Math.max(last ?? 0, token.offset);
    if (token.type === 'document') open.push(token.value ?? null);
    if ('items' in token) for (const { key, value } of token.items) open.push(key ?? null, value ?? null);
  }
  return last;
}

function refusedProperties(tokens: readonly CST.Token[]): Refused[] {
  const refused: Refused[] = [];
  for (const token of tokens) {
    if (token.type === 'anchor') refused.push(refusal('yaml-anchor', token));
    if (token.type === 'tag') refused.push(refusal('yaml-tag', token));
  }
  return refused;
}

type RefusedCode = 'yaml-anchor' | 'yaml-tag' | 'yaml-syntax' | 'second-document' | 'nested-too-deeply';

function refusal(code: RefusedCode, token: { readonly offset: number; readonly source: string }): Refused {
  const found = token.source.trimEnd();
  const { message, accepted } = reasons[code];
  return {
    code,
    start: token.offset,
    end: token.offset + found.length,
    message: message.replace('…', found.slice(0, 40)),
    found,
    accepted,
  };
}

const reasons: Readonly<Record<RefusedCode, { readonly message: string; readonly accepted: string }>> = {
  'yaml-anchor': {
    message:
      'Anchors and aliases are not accepted (`…`): write the value out, or put it in quotes if it begins with & or *.',
    accepted: 'plain values',
  },
  'yaml-tag': {
    message:
      'Tags are not accepted (`…`): leave it out, or put the value in quotes if it begins with an exclamation mark.',
    accepted: 'plain values',
  },
  'yaml-syntax': {
    message: 'Instructions to a YAML reader are not accepted (`…`): leave the line out.',
    accepted: '`key: value` lines',
  },
  'second-document': {
    message:
      'The line `…` ends the front matter before its end: leave it out, all fields stand in one piece.',
    accepted: 'one list of fields between two lines `---`',
  },
  'nested-too-deeply': {
    message: `Lists and maps stand inside each other more than ${limits.nesting} deep: no field needs that.`,
    accepted: `at most ${limits.nesting} levels`,
  },
};
