import { Composer, type CST, isMap, isScalar, Parser, type YAMLMap, type YAMLParseError } from 'yaml';
import { problemOver, type Text } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { forbiddenCharacters } from './forbidden-characters.ts';
import { checkFrame } from './frame.ts';
import { bytesBeyond, limits } from './limits.ts';
import { lineStarts } from './line-index.ts';
import type { SourceDocument, SourceMap } from './source.ts';
import type { Split } from './split-plain.ts';
import { yamlSentence } from './yaml-sentences.ts';
import { lastQuote, refusedTokens } from './yaml-tokens.ts';
import { TreeBuilder } from './yaml-tree.ts';

export interface ReadSource {
  /** Null where the fields could not be made out at all. */
  readonly source: SourceDocument | null;
  readonly problems: readonly Problem[];
}

/**
 * Reads one content file: checks its frame and limits, splits it, reads its front matter as YAML 1.2 in which every value
 * stays the text that was written. Never throws; whatever is wrong is a problem with its place. A byte order mark and CRLF
 * line ends are accepted.
 */
export function readSource(file: string, written: string, split: Split): ReadSource {
  const text = asText(file, written);
  const tooLarge = checkSize(text, limits.fileBytes);
  if (tooLarge !== null) return { source: null, problems: [tooLarge] };
  if (/^[^\n]*\r[^\n]*$/.test(text.text)) return { source: null, problems: [oldLineEnds(text)] };
  const forbidden = checkCharacters(text, 0, text.text);
  const frame = checkFrame(text);
  if (frame !== null) return { source: null, problems: [frame, ...forbidden] };
  const parts = split(text.text);
  const frontMatterBytes = bytesBeyond(parts.frontMatter, limits.frontMatterBytes);
  if (frontMatterBytes > 0)
    return { source: null, problems: [frontMatterTooLarge(text, frontMatterBytes), ...forbidden] };
  const { root, problems } = readYaml(text, parts.frontMatter, parts.frontMatterStart);
  const all = [...forbidden, ...problems];
  if (root === null) return { source: null, problems: all };
  return { source: { ...text, written, root, body: parts.body, bodyStart: parts.bodyStart }, problems: all };
}

/**
 * Reads a JSON file, such as a frozen result, into the same kind of source: a place for every field, every value as text.
 * JSON is YAML as far as this reader goes; that it is JSON is checked first.
 */
export function readJsonSource(file: string, written: string): ReadSource {
  const text = asText(file, written);
  try {
    JSON.parse(text.text);
  } catch (fault) {
    const message = `The file is not JSON (${fault instanceof Error ? fault.message : 'unknown fault'}): it is written by \`npm run close\` and is not meant to be edited.`;
    return { source: null, problems: [problemOver(text, 0, 0, 'not-json', { message })] };
  }
  const { root, problems } = readYaml(text, text.text, 0);
  if (root === null) return { source: null, problems };
  return { source: { ...text, written, root, body: '', bodyStart: text.text.length }, problems };
}

function asText(file: string, written: string): Text {
  const text = written.charCodeAt(0) === 0xfeff ? written.slice(1) : written;
  return { file, text, lines: lineStarts(text) };
}

function readYaml(text: Text, yaml: string, shift: number): { root: SourceMap | null; problems: Problem[] } {
  const tokens: CST.Token[] = [...new Parser().parse(yaml)];
  const refused = refusedTokens(tokens).map(({ code, start, end, ...fields }) =>
    problemOver(text, start + shift, end + shift, code, fields),
  );
  if (refused.some(({ code }) => code !== 'yaml-tag')) return { root: null, problems: refused };
  const options = { version: '1.2', schema: 'failsafe', uniqueKeys: false, prettyErrors: false } as const;
  const [document] = new Composer(options).compose(tokens, true, yaml.length);
  const faults =
    document === undefined ? [] : document.errors.filter(({ code }) => code !== 'TAG_RESOLVE_FAILED');
  if (faults.length > 0)
    return { root: null, problems: [...refused, ...firstFault(text, faults, tokens, shift)] };
  const contents = document?.contents ?? null;
  const nothing =
    contents === null || (isScalar(contents) && contents.value === '' && contents.source === '');
  if (nothing) return { root: { kind: 'map', pairs: [], start: shift, end: shift }, problems: refused };
  if (!isMap(contents)) {
    const [start, end] = contents.range;
    const message =
      'The front matter must be fields, `key: value`, one on a line; it is a list or a single piece of text. A colon or the space after it may be missing.';
    return {
      root: null,
      problems: [
        ...refused,
        problemOver(text, start + shift, end + shift, 'front-matter-not-fields', { message }),
      ],
    };
  }
  const builder = new TreeBuilder(text, shift);
  const root = builder.buildMap(contents as YAMLMap.Parsed);
  return { root, problems: [...refused, ...builder.problems] };
}

/** The first fault: from there on nothing can be read, and those after it are its echo. */
function firstFault(
  text: Text,
  faults: readonly YAMLParseError[],
  tokens: readonly CST.Token[],
  shift: number,
): Problem[] {
  const [first] = [...faults].sort((a, b) => a.pos[0] - b.pos[0]);
  if (first === undefined) return [];
  const { code, message } = first;
  // A quote that is never closed is missed at the end of the text; the hand that closes it looks where it was opened.
  const quote = /closing .*quote/.test(message) ? lastQuote(tokens) : null;
  const [from, to] = quote === null ? first.pos : [quote, quote + 1];
  const start = Math.min(from + shift, text.text.length);
  const end = Math.min(to + shift, text.text.length);
  const which = code === 'RESOURCE_EXHAUSTION' ? 'nested-too-deeply' : 'yaml-syntax';
  return [problemOver(text, start, end, which, { message: yamlSentence(code, message) })];
}

const mostCharacters = 10;

function checkCharacters(text: Text, start: number, piece: string): Problem[] {
  return forbiddenCharacters(piece, mostCharacters).map(({ index, length, name, reason }) =>
    problemOver(text, start + index, start + index + length, 'forbidden-character', {
      message: `The character ${name} is not accepted (${reason}): delete it.`,
      found: name,
      accepted: 'text, tabs and line ends',
    }),
  );
}

function oldLineEnds(text: Text): Problem {
  return problemOver(text, 0, 0, 'forbidden-character', {
    message:
      'All lines of the file end with a carriage return alone (U+000D), so that it is one long line: save it with the line ends of Unix (LF) or Windows (CRLF).',
    found: 'U+000D',
    accepted: 'lines that end with LF or CRLF',
  });
}

function checkSize(text: Text, limit: number): Problem | null {
  const bytes = bytesBeyond(text.text, limit);
  if (bytes === 0) return null;
  return problemOver(text, 0, 0, 'file-too-large', {
    message: `The file holds ${bytes} bytes; at most ${limit} are accepted. Move pictures and logs into files of their own.`,
    found: `${bytes} bytes`,
    accepted: `at most ${limit} bytes`,
  });
}

function frontMatterTooLarge(text: Text, bytes: number): Problem {
  return problemOver(text, 0, 0, 'front-matter-too-large', {
    message: `The front matter holds ${bytes} bytes; at most ${limits.frontMatterBytes} are accepted.`,
    found: `${bytes} bytes`,
    accepted: `at most ${limits.frontMatterBytes} bytes`,
  });
}
