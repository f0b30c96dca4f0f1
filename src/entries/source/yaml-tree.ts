import { isAlias, isMap, isScalar, isSeq, type Node, type ParsedNode, type Scalar, type YAMLMap } from 'yaml';
import { placeOver, problemOver, type Text } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceMap, SourceNode, SourceScalar } from './source.ts';

/** Of the keys that people make up themselves, such as the parts of a mass, the longest anybody needs. */
const longestKey = 100;

interface Pair {
  readonly key: SourceScalar;
  readonly value: SourceNode;
}

/** Turns the nodes of the YAML reader into ours, and reports what YAML lets pass: double keys, decimal commas in braces. */
export class TreeBuilder {
  readonly problems: Problem[] = [];
  readonly #text: Text;
  readonly #shift: number;

  /** Offsets of the YAML text are shifted to those of the file. */
  constructor(text: Text, shift: number) {
    this.#text = text;
    this.#shift = shift;
  }

  build(node: Node | null): SourceNode {
    if (isMap(node)) return this.buildMap(node as YAMLMap.Parsed);
    if (isSeq(node))
      return {
        kind: 'list',
        items: this.#joined(node.items.map((item) => this.build(item as Node))),
        ...this.#range(node),
      };
    if (isScalar(node)) return this.#scalar(node);
    return { kind: 'scalar', text: isAlias(node) ? node.source : '', ...this.#range(node) };
  }

  #scalar(node: Scalar): SourceScalar {
    const scalar = { kind: 'scalar', text: String(node.value ?? ''), ...this.#range(node) } as const;
    const inner = node.type === 'PLAIN' ? withoutTypographicQuotes(scalar.text) : null;
    if (inner !== null)
      this.problems.push(
        problemOver(this.#text, scalar.start, scalar.end, 'typographic-quotes', {
          message: `The quotes around ${cut(scalar.text)} are not those of YAML, so they stay in the text. Write "${cut(inner)}" with straight ones, or leave them out.`,
          found: scalar.text,
          accepted: 'straight quotes, " or \'',
          suggestion: JSON.stringify(inner),
        }),
      );
    return scalar;
  }

  buildMap(map: YAMLMap.Parsed): SourceMap {
    const pairs = new Map<string, Pair>();
    let previous: string | null = null;
    for (const item of map.items) {
      const key = this.build(item.key as ParsedNode | null);
      if (key.kind !== 'scalar' || key.text === '') this.#reportKey(key);
      else if (item.value === null) this.#bareWord(pairs, previous, key);
      else if (key.text === '<<') this.#reportMerge(key);
      else if (key.text.length > longestKey) this.#reportLongKey(key);
      else {
        const first = pairs.get(key.text);
        if (first !== undefined) this.#reportDuplicate(first.key, key);
        else pairs.set(key.text, { key, value: this.build(item.value as ParsedNode) });
        previous = key.text;
      }
    }
    return { kind: 'map', pairs: [...pairs.values()], ...this.#range(map) };
  }

  /** A word in braces without a colon: the rest of a number with a decimal comma, or a slip. */
  #bareWord(pairs: Map<string, Pair>, previous: string | null, key: SourceScalar): void {
    const before = previous === null ? undefined : pairs.get(previous);
    if (previous !== null && before?.value.kind === 'scalar' && this.#splitNumber(before.value, key)) {
      pairs.set(previous, { key: before.key, value: this.#join(before.value, key) });
      return;
    }
    if (previous !== null && before?.value.kind === 'scalar' && this.#splitQuotes(before.value, key)) {
      pairs.set(previous, { key: before.key, value: { ...before.value, end: key.end } });
      return;
    }
    this.problems.push(
      problemOver(this.#text, key.start, key.end, 'key-without-value', {
        message: `"${key.text}" stands in braces without a colon and a value: write \`${key.text}: …\`, or put a text that holds a comma in quotes.`,
        found: key.text,
        accepted: '`{ key: value, key: value }`',
      }),
    );
  }

  /** Whether a comma split a text in typographic quotes, which is then reported where it began. */
  #splitQuotes(before: SourceScalar, after: SourceScalar): boolean {
    const written = this.#text.text.slice(before.start, after.end);
    const inner = withoutTypographicQuotes(written);
    if (inner === null) return /^[“„”]/.test(written) && !/[“”]$/.test(before.text);
    this.problems.push(
      problemOver(this.#text, before.start, after.end, 'key-without-value', {
        message: `The quotes around ${cut(written)} are not those of YAML, which splits the text at its comma. Write "${cut(inner)}" with straight ones.`,
        found: written,
        accepted: 'straight quotes, " or \'',
        suggestion: JSON.stringify(inner),
      }),
    );
    return true;
  }

  /** Puts together again what YAML split at a decimal comma, and reports each. */
  #joined(items: readonly SourceNode[]): SourceNode[] {
    const joined: SourceNode[] = [];
    for (const item of items) {
      const before = joined.at(-1);
      const whole = before?.kind === 'scalar' && /^[-+−]?\d+$/.test(before.text);
      const withUnit = item.kind === 'scalar' && /^\d+\s*[^\d\s.,x×]/.test(item.text);
      if (whole && withUnit && this.#splitNumber(before, item))
        joined[joined.length - 1] = this.#join(before, item);
      else joined.push(item);
    }
    return joined;
  }

  #splitNumber(before: SourceScalar, after: SourceScalar): boolean {
    const between = this.#text.text.slice(before.end, after.start);
    return between === ',' && /\d$/.test(before.text) && /^\d/.test(after.text);
  }

  #join(before: SourceScalar, after: SourceScalar): SourceScalar {
    const found = `${before.text},${after.text}`;
    const suggestion = `${before.text}.${after.text}`;
    const ungrouped = `${before.text}${after.text}`;
    // Digits in threes may be thousands: then there are two readings, which are offered here and not again by the field.
    const ambiguous = /^[-+−]?[1-9]\d{0,2}$/.test(before.text) && /^\d{3}(?!\d)/.test(after.text);
    const how = ambiguous
      ? `it can be read in two ways, so write ${suggestion} or ${ungrouped}.`
      : `write ${suggestion} with a decimal point, or put it in quotes.`;
    this.problems.push(
      problemOver(this.#text, before.start, after.end, 'comma-in-braces', {
        message: `Inside { } and [ ] YAML splits "${found}" at its comma: ${how}`,
        found,
        accepted: ambiguous ? `${suggestion} or ${ungrouped}` : `${suggestion}, or "${found}" in quotes`,
        suggestion: ambiguous ? null : suggestion,
      }),
    );
    return { kind: 'scalar', text: ambiguous ? ungrouped : found, start: before.start, end: after.end };
  }

  #reportKey(key: SourceNode): void {
    this.problems.push(
      problemOver(this.#text, key.start, key.end, 'key-not-text', {
        message:
          key.kind === 'scalar'
            ? 'A value stands here without a key: write `key: value`.'
            : 'A list or a map stands here in the place of a key: write `key: value` with a plain word as the key.',
        accepted: '`key: value`',
      }),
    );
  }

  #reportLongKey(key: SourceScalar): void {
    const found = cut(key.text);
    this.problems.push(
      problemOver(this.#text, key.start, key.end, 'too-long', {
        message: `"${found}" stands in the place of a key and has ${key.text.length} characters; no key has more than ${longestKey}.`,
        found,
        accepted: '`key: value`',
      }),
    );
  }

  #reportMerge(key: SourceScalar): void {
    this.problems.push(
      problemOver(this.#text, key.start, key.end, 'merge-key', {
        message: 'The merge key `<<` is not accepted: write the fields out.',
        found: '<<',
        accepted: 'plain fields',
      }),
    );
  }

  #reportDuplicate(first: SourceScalar, second: SourceScalar): void {
    const place = placeOver(this.#text, first.start, first.end);
    this.problems.push(
      problemOver(this.#text, second.start, second.end, 'duplicate-key', {
        message: `\`${second.text}\` stands twice here, first in line ${place.line}: keep one of the two.`,
        found: second.text,
        accepted: 'each key once',
        related: { ...place, message: `\`${first.text}\` stands here first.` },
      }),
    );
  }

  #range(node: Node | null): { readonly start: number; readonly end: number } {
    const [start, end] = node?.range ?? [0, 0];
    return { start: start + this.#shift, end: end + this.#shift };
  }
}

/** What stands between typographic quotes that enclose a text and nothing else; null where none do. */
function withoutTypographicQuotes(text: string): string | null {
  return /^[“„”]([^“„”]+)[“”]$/.exec(text)?.[1] ?? /^[‘‚’]([^‘‚’]+)[‘’]$/.exec(text)?.[1] ?? null;
}

function cut(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
