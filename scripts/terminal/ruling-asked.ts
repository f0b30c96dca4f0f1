import type { Verdict } from '../../src/model/ruling.ts';
import { type OptionValues, UsageError } from './command-line.ts';

/** The options of the command. */
export const options = {
  by: 'value',
  reason: 'value',
  date: 'value',
  time: 'value',
  seen: 'value',
  received: 'value',
  second: 'value',
  kept: 'value',
  span: 'value',
  'wing-area': 'value',
  airframe: 'value',
  rubber: 'value',
  balance: 'value',
  content: 'value',
  now: 'value',
  'dry-run': 'flag',
} as const;

export type Values = OptionValues<typeof options>;

/** Words of the command line, and the verdicts they write. */
const verdicts: Readonly<Record<string, Verdict>> = { accept: 'accepted', refuse: 'refused', void: 'void' };

export const measures = ['span', 'wing-area', 'airframe', 'rubber', 'balance'] as const;
const aboutFlight = ['time', 'seen', 'received', 'second', 'kept'] as const;

/** What the arguments ask for, before anything is read. */
export type Asked =
  | { readonly is: 'flight'; readonly flight: number; readonly verdict: Verdict }
  | { readonly is: 'inspect' }
  | { readonly is: 'disqualify' }
  | { readonly is: 'reinstate' };

/** What the words behind the entry ask for. Throws a UsageError for what cannot be meant, or not with these options. */
export function askedFor(words: readonly string[], values: Values): Asked {
  const [first = '', second, more] = words;
  const asked =
    first === 'inspect' || first === 'disqualify' || first === 'reinstate'
      ? ({ is: first } as const)
      : aFlight(first, second);
  if (more !== undefined || (asked.is !== 'flight' && second !== undefined))
    throw new UsageError(`"${more ?? second}" is one word too many; put quotes around a value with spaces.`);
  const needless: readonly (keyof Values)[] =
    asked.is === 'flight'
      ? measures
      : asked.is === 'inspect'
        ? [...aboutFlight, 'reason']
        : [...aboutFlight, ...measures];
  for (const option of needless)
    if (values[option] !== undefined)
      throw new UsageError(`The option --${option} has no meaning with \`${second ?? first}\`.`);
  if (asked.is === 'inspect' && measures.every((measure) => values[measure] === undefined))
    throw new UsageError(
      `An inspection needs at least one measure: ${measures.map((measure) => `--${measure}`).join(', ')}.`,
    );
  const needsReason = asked.is === 'flight' ? asked.verdict !== 'accepted' : asked.is !== 'inspect';
  if (needsReason && values.reason === undefined)
    throw new UsageError(
      `\`${second ?? first}\` needs a reason that the builder can read, such as --reason "The landing is not on the video."`,
    );
  if (asked.is === 'flight' && asked.verdict !== 'accepted' && values.time !== undefined)
    throw new UsageError(`Only an acceptance can carry a ruled time; leave out --time with \`${second}\`.`);
  return asked;
}

function aFlight(number: string, word: string | undefined): Asked {
  if (!/^[1-9]\d{0,5}$/.test(number))
    throw new UsageError(
      `After the entry stands the number of a flight, \`inspect\`, \`disqualify\` or \`reinstate\`, but ${number === '' ? 'nothing' : `"${number}"`} was given.`,
    );
  const verdict = Object.hasOwn(verdicts, word ?? '') ? verdicts[word ?? ''] : undefined;
  if (verdict === undefined)
    throw new UsageError(
      `After the flight stands accept, refuse or void, but ${word === undefined ? 'nothing' : `"${word}"`} was given.`,
    );
  return { is: 'flight', flight: Number(number), verdict };
}

/** Who decides. Throws a UsageError where nobody is named. */
export function whoDecides({ by }: Values): string {
  if (by === undefined)
    throw new UsageError(
      'Say who decides with --by and a handle, such as --by otter: neither the site nor this machine knows it.',
    );
  return by;
}
