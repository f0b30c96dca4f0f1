import { limitOpenings } from '../../contest/rules/limit.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { spellingsOf } from '../../quantities/units.ts';

/** A digit, or a fraction in one sign such as ½. */
const digit = '[0-9¼-¾⅐-⅞]';

/**
 * A pattern of texts that may be a quantity of a kind: a digit, and behind one the first word of a unit. It refuses
 * nothing that the reader accepts, in any case or typography, and so lets through some texts that the reader refuses:
 * what stands in a unit behind its first word, and whether the number can be read, is for the reader alone.
 */
export function quantityPattern(kind: Kind): string {
  const spellings = [...spellingsOf(kind).keys()];
  if (spellings.includes('')) return digit;
  const starts = [...new Set(spellings.map((spelling) => /^[A-Za-z]+|^./.exec(spelling)?.[0] ?? ''))];
  const words = starts.filter((start) => /[A-Za-z]/.test(start));
  const signs = starts.filter((start) => !/[A-Za-z]/.test(start));
  // `square` is read as `sq`, and two signs of feet as one of inches; all signs have many forms outside ASCII.
  if (words.includes('sq')) words.push('square');
  if (signs.includes('"')) signs.push("''");
  const anySign = signs.length === 0 ? [] : [...signs, '[^ -~±]'];
  const units = [`(?:${words.map(inAnyCase).join('|')})(?![A-Za-z])`, ...anySign];
  const withUnit = `${digit}[^A-Za-z]*(?:${units.join('|')})`;
  return kind === 'time' ? `${digit}:[0-9]|${withUnit}` : withUnit;
}

/** A pattern of texts that may be a balance: a length, or a share in per cent. */
export function balancePattern(): string {
  return `${digit}.*%|${quantityPattern('length')}`;
}

/** A pattern of texts that may be a limit in words, on a quantity of a kind where one is given. */
export function limitPattern(kind: Kind | null = null): string {
  const openings = limitOpenings.map((words) => words.split(' ').map(inAnyCase).join('\\s+'));
  const limit = `^(?=\\s*(?:${openings.join('|')})\\s|.*\\S\\s+${inAnyCase('to')}\\s+\\S)`;
  return `${limit}.*(?:${kind === null ? digit : quantityPattern(kind)})`;
}

/** A word of letters, in upper or lower case: a JSON Schema has no flag for that. */
export function inAnyCase(word: string): string {
  return word.replace(/[A-Za-z]/g, (letter) => `[${letter.toUpperCase()}${letter.toLowerCase()}]`);
}
