import * as z from 'zod';
import { describedAt, keysAt, mayBeAbsent, schemasAt } from '../schema/field-at.ts';
import type { Refusal } from '../schema/leaf.ts';
import { limits } from '../source/limits.ts';
import { lineEnd } from '../source/line-index.ts';
import { nodeAt } from '../source/locate.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { cutProblems, mostProblems } from './cut-problems.ts';
import { didYouMean } from './did-you-mean.ts';
import { fieldName } from './field-name.ts';
import {
  type Elsewhere,
  isSameWord,
  type Known,
  keyElsewhere,
  knownFields,
  whereIn,
  writtenFrom,
} from './key-elsewhere.ts';
import { problemAt } from './make-problem.ts';
import type { Problem } from './problem.ts';
import { type ProblemCode, problemCodes } from './problem-codes.ts';

export interface IssueContext {
  readonly source: SourceDocument;
  readonly schema: z.core.$ZodType;
  readonly misplaced?: Misplaced;
}

/** With every field of the schema, where a key is unknown. */
interface Context extends IssueContext {
  readonly known: readonly Known[];
}

/** Keys that are known elsewhere but have no meaning in a map: the reason, by the map's path without its places in lists. */
export type Misplaced = ReadonlyMap<string, ReadonlyMap<string, string>>;

/**
 * Turns what zod reports into problems, each at the place where it stands. This is the only place that words an issue
 * of the schema. The issues must carry their input (`reportInput`).
 */
export function issuesToProblems(given: IssueContext, issues: readonly z.core.$ZodIssue[]): Problem[] {
  const unknown = issues.some(({ code }) => code === 'unrecognized_keys');
  const context = { ...given, known: unknown ? knownFields(given.schema) : [] };
  const misspelt = misspeltFields(context, issues);
  const astray = fieldsAstray(context, issues);
  const repeated = namesRepeated(issues);
  const problems: Problem[] = [];
  for (const issue of issues) {
    const more = repeated.get(issue);
    if (more === 'told') continue;
    if (isMissing(issue) && misspelt.has(JSON.stringify(issue.path))) continue;
    if (isMissing(issue) && astray.some((field) => holdsIn(patternOf(pathOf(issue.path)), field))) continue;
    const found = ofIssue(context, issue, []);
    problems.push(...(more === undefined ? found : found.map((problem) => andInMore(problem, more))));
    if (problems.length > mostProblems) return [...cutProblems(context.source, problems)];
  }
  return problems;
}

function isMissing(issue: z.core.$ZodIssue): boolean {
  return issue.code === 'invalid_type' && issue.input === undefined;
}

/**
 * The fields whose name an unknown key nearly is, by their path. Where such a field is missing too, that is one mistake,
 * told at the unknown key.
 */
function misspeltFields(context: Context, issues: readonly z.core.$ZodIssue[]): ReadonlySet<string> {
  const fields = new Set<string>();
  for (const issue of issues) {
    if (issue.code !== 'unrecognized_keys') continue;
    const known = keysAt(context.schema, pathOf(issue.path));
    for (const key of issue.keys) {
      const near = didYouMean(key, known);
      if (near !== null) fields.add(JSON.stringify([...issue.path, near]));
    }
  }
  return fields;
}

/**
 * A name that is refused in many flights is one mistake, told at the first: how many flights more have it in the same field,
 * and for those that it is told.
 */
function namesRepeated(issues: readonly z.core.$ZodIssue[]): ReadonlyMap<z.core.$ZodIssue, number | 'told'> {
  const repeated = new Map<z.core.$ZodIssue, number | 'told'>();
  const firsts = new Map<string, z.core.$ZodIssue>();
  for (const issue of issues) {
    if (issue.code !== 'custom' || issue.params?.code !== 'not-a-slug' || issue.path[0] !== 'flights')
      continue;
    const key = JSON.stringify([patternOf(pathOf(issue.path)), issue.input]);
    const first = firsts.get(key);
    if (first === undefined) firsts.set(key, issue);
    else if (first.path[1] !== issue.path[1]) {
      const more = repeated.get(first);
      repeated.set(first, typeof more === 'number' ? more + 1 : 1);
      repeated.set(issue, 'told');
    }
  }
  return repeated;
}

function andInMore(problem: Problem, more: number): Problem {
  return {
    ...problem,
    message: `${problem.message} It stands in ${more} more ${more === 1 ? 'flight' : 'flights'}.`,
  };
}

/** The fields that stand in another map than their own, without their places in lists; not missed as well. */
function fieldsAstray(context: Context, issues: readonly z.core.$ZodIssue[]): readonly string[] {
  return issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys'
      ? issue.keys
          .slice(0, mostProblems + 1)
          .flatMap((key) =>
            (meantElsewhere(context, pathOf(issue.path), key) ?? []).map(({ path }) => patternOf(path)),
          )
      : [],
  );
}

/** Whether a field is another one, or holds it. */
function holdsIn(field: string, inner: string): boolean {
  return inner === field || inner.startsWith(`${field}.`);
}

/**
 * Where a key that is unknown in its map belongs, there where it is required before all others; null where it is not known
 * elsewhere, or is a key of the map but for case and hyphens.
 */
function meantElsewhere(context: Context, parent: Path, key: string): readonly Elsewhere[] | null {
  if (keysAt(context.schema, parent).some((known) => isSameWord(known, key))) return null;
  const places = keyElsewhere(context.known, parent, key);
  const required = places.filter(({ path }) => !mayBeAbsent(context.schema, path));
  return places.length === 0 ? null : required.length > 0 ? required : places;
}

function pathOf(path: readonly PropertyKey[]): Path {
  return path.map((key) => (typeof key === 'symbol' ? String(key) : key));
}

function ofIssue(context: Context, issue: z.core.$ZodIssue, above: Path): Problem[] {
  const path = [...above, ...pathOf(issue.path)];
  switch (issue.code) {
    case 'custom':
      if (issue.input === '') return [wrongShape(context, path, '')];
      return [
        listMeant(context, path) ?? ofRefusal(context.source, path, issue.params as unknown as Refusal),
      ];
    case 'unrecognized_keys':
      return issue.keys.slice(0, mostProblems + 1).map((key) => unknownKey(context, path, key));
    case 'invalid_union':
      return ofAlternatives(context, issue, path);
    case 'invalid_type':
      return [issue.input === undefined ? missing(context, path) : wrongShape(context, path, issue.input)];
    // A map with a key `length` passes for a list there; that it is none is told by another issue.
    case 'too_big':
      return Array.isArray(issue.input) ? [tooMany(context, path, issue)] : [];
    case 'too_small':
      return !Array.isArray(issue.input) ? [] : [wrongShape(context, path, issue.input)];
    case 'invalid_key':
    case 'invalid_element':
      return issue.issues.flatMap((inner) => ofIssue(context, { ...inner, path: [] }, path));
    default:
      return [wrongShape(context, path, issue.input)];
  }
}

/** Several values written as one text with commas, where a list of them would be accepted; null where that is not so. */
function listMeant(context: Context, path: Path): Problem | null {
  const above = path.slice(0, -1);
  const written = path.at(-1) === 0 ? nodeAt(context.source, above) : null;
  if (written?.kind !== 'scalar') return null;
  const items = written.text.split(',', limits.items + 1).map((item) => item.trim());
  if (items.length > limits.items) return null;
  const lists = schemasAt(context.schema, above).filter((form) => form instanceof z.ZodArray);
  const accepted = items.every((item) => lists.some(({ element }) => z.safeParse(element, item).success));
  if (items.length < 2 || !accepted) return null;
  const list = `[${items.join(', ')}]`;
  return problemAt(context.source, above, 'value', 'wrong-shape', {
    message: `${fieldName(context.source, above)}: "${written.text}" is read as one value. Write several in brackets, \`${list}\`.`,
    found: written.text,
    accepted: 'a single value, or a list in brackets',
    suggestion: list,
  });
}

/** A refused text: the field's name, then what its reader said. */
export function ofRefusal(
  source: SourceDocument,
  path: Path,
  refusal: Refusal,
  part: 'key' | 'value' = 'value',
): Problem {
  const { code, message, found, accepted, suggestion } = refusal;
  const quoted = suggestion?.startsWith('"') ? suggestion : `"${suggestion}"`;
  const offer = suggestion === undefined || message.includes(quoted) ? '' : ` Did you mean ${quoted}?`;
  return problemAt(source, path, part, knownCode(code), {
    message: `${fieldName(source, path)}: ${message}${offer}`,
    found,
    accepted,
    suggestion,
  });
}

// Of several forms of a field, the one whose shape was written is the one that was meant.
function ofAlternatives(
  context: Context,
  issue: Extract<z.core.$ZodIssue, { code: 'invalid_union' }>,
  path: Path,
): Problem[] {
  if (issue.input === undefined) return [missing(context, path)];
  const meant = issue.errors.find(
    (errors) => !errors.some((error) => error.code === 'invalid_type' && error.path.length === 0),
  );
  if (meant === undefined) return [wrongShape(context, path, issue.input)];
  return meant.flatMap((error) => ofIssue(context, error, path));
}

function missing(context: Context, path: Path): Problem {
  const described = describedAt(context.schema, path);
  const key = String(path.at(-1));
  const example = described?.example ?? '';
  const what = described === null ? '' : `: ${lowerFirst(described.description)}`;
  const line = example === '' ? null : `${key}: ${example}`;
  const how = line === null ? '' : ` Write it like \`${line}\`.`;
  return problemAt(context.source, path.slice(0, -1), 'key', 'missing-field', {
    message: `${fieldName(context.source, path)} is missing${what}.${how}`,
    accepted: described?.description ?? null,
    suggestion: line,
  });
}

function unknownKey(context: Context, parent: Path, key: string): Problem {
  const path = [...parent, key];
  const known = keysAt(context.schema, parent);
  const reason = context.misplaced?.get(patternOf(parent))?.get(key);
  const name = fieldName(context.source, path);
  if (reason !== undefined)
    return problemAt(context.source, path, 'key', 'key-not-here', {
      message: `${name} can't stand here: ${reason}.`,
      found: key,
      accepted: known.join(', '),
    });
  const elsewhere = meantElsewhere(context, parent, key);
  if (elsewhere !== null) return keyAstray(context, parent, key, elsewhere);
  const near = didYouMean(key, known);
  return problemAt(context.source, path, 'key', 'unknown-key', {
    message: `${name} is not a known key.${near === null ? ` Known here: ${known.join(', ')}.` : ` Did you mean \`${near}\`?`}`,
    found: key,
    accepted: known.join(', '),
    suggestion: near,
  });
}

function keyAstray(context: Context, parent: Path, key: string, places: readonly Elsewhere[]): Problem {
  const path = [...parent, key];
  const written = nodeAt(context.source, path);
  const value =
    written?.kind === 'scalar' && /^[^[\]{}:#"',\n]{1,40}$/.test(written.text) ? written.text : '…';
  const [only] = places.length === 1 ? places : [];
  const line = only === undefined ? null : writtenFrom(only, parent, value);
  const name = only?.path.at(-1) ?? key;
  const where = [...new Set(places.map((place) => whereIn(place, parent)))].join(' or ');
  const renamed = name === key ? '' : `, as \`${name}\``;
  const how = line === null ? '' : ` Write it like \`${line}\`.`;
  return problemAt(context.source, path, 'key', 'unknown-key', {
    message: `${fieldName(context.source, path)} is not known here: it belongs ${where}${renamed}.${how}`,
    found: key,
    accepted: keysAt(context.schema, parent).join(', '),
    suggestion: line?.includes('…') === true ? null : line,
  });
}

function tooMany(
  context: Context,
  path: Path,
  { input, maximum }: Extract<z.core.$ZodIssue, { code: 'too_big' }>,
): Problem {
  const found = `${Array.isArray(input) ? input.length : 'more'} items`;
  return problemAt(context.source, path, 'key', 'too-many-items', {
    message: `${fieldName(context.source, path)} has ${found}; at most ${maximum} are accepted. Keep those that readers need.`,
    found,
    accepted: `at most ${maximum} items`,
  });
}

function wrongShape(context: Context, path: Path, input: unknown): Problem {
  // An item of a list goes by what its list says of itself.
  const named = path.slice(0, path.findLastIndex((segment) => typeof segment === 'string') + 1);
  const described = describedAt(context.schema, path) ?? describedAt(context.schema, named);
  const key = path.findLast((segment) => typeof segment === 'string') ?? '';
  const wanted = shapesInWords(schemasAt(context.schema, path));
  const name = fieldName(context.source, path);
  const example = described?.example ?? '';
  const line = example === '' ? null : `${key}: ${example}`;
  const how = line === null ? '' : ` Write it like \`${line}\`.`;
  if (input === '' || (Array.isArray(input) && input.length === 0))
    return problemAt(context.source, path, 'value', 'empty-field', {
      message: `${name}: nothing is written here${hiddenByHash(context.source, path) ? ': what follows a space and `#` is a remark, so put the value in quotes' : ''}${mayBeAbsent(context.schema, path) ? '; leave it out where you have nothing to say' : ', and it is required'}.${how}`,
      found: '',
      accepted: wanted,
      suggestion: line,
    });
  return problemAt(context.source, path, 'value', 'wrong-shape', {
    message: `${name} should be ${wanted}, but ${shapeInWords(input)} is written.${how}`,
    found: typeof input === 'string' ? input : shapeInWords(input),
    accepted: wanted,
    suggestion: line,
  });
}

/** Whether a value vanished behind the `#` it begins with. */
function hiddenByHash(source: SourceDocument, path: Path): boolean {
  const node = nodeAt(source, path);
  return (
    node?.kind === 'scalar' && /^\s*#\S/.test(source.text.slice(node.end, lineEnd(source.text, node.end)))
  );
}

function shapesInWords(forms: readonly z.core.$ZodType[]): string {
  const shapes = forms.map((form) =>
    form instanceof z.ZodArray
      ? 'a list'
      : form instanceof z.ZodObject || form instanceof z.ZodRecord
        ? 'a map of keys and values'
        : 'a single value',
  );
  return [...new Set(shapes)].join(' or ') || 'something else';
}

function shapeInWords(input: unknown): string {
  if (Array.isArray(input)) return 'a list';
  return typeof input === 'object' && input !== null ? 'a map of keys and values' : `"${String(input)}"`;
}

/** A path without the places in lists: `setups`, `flights.weather`. */
export function patternOf(path: Path): string {
  return path.filter((segment) => typeof segment === 'string').join('.');
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function knownCode(code: string): ProblemCode {
  if (Object.hasOwn(problemCodes, code)) return code as ProblemCode;
  throw new Error(`No such problem code: ${code}`);
}
