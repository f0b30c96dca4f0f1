import { parseArgs } from 'node:util';
import { didYouMean } from '../../src/entries/problems/did-you-mean.ts';

/** What an option takes: a value, a value each time it is given, or nothing. */
export type OptionKind = 'value' | 'values' | 'flag';

/** Options as read: a flag is there or not, a value is there or undefined, values are a list. */
export type OptionValues<Options extends Readonly<Record<string, OptionKind>>> = {
  readonly [Name in keyof Options]: Options[Name] extends 'flag'
    ? boolean
    : Options[Name] extends 'values'
      ? readonly string[]
      : string | undefined;
};

export interface Command<Options extends Readonly<Record<string, OptionKind>>> {
  readonly name: string;
  /** The word behind the name that says what the command is to do, where its help is one of several. */
  readonly kind?: string;
  /** Printed for --help, without the final newline. */
  readonly help: string;
  readonly options: Options;
  /** What stands after the options, such as `[paths…]`; null where the command takes nothing there. */
  readonly takes: string | null;
}

/** A command called in a way it does not understand: printed as a sentence, exit code 2. */
export class UsageError extends Error {}

/**
 * Reads the arguments of a command and does its work. Prints the help for --help and a sentence for a wrong use.
 * Gives the exit code: the work's own, 0 for help, 2 for a wrong use.
 */
export async function runCommand<Options extends Readonly<Record<string, OptionKind>>>(
  command: Command<Options>,
  argv: readonly string[],
  work: (values: OptionValues<Options>, rest: readonly string[]) => Promise<number>,
): Promise<number> {
  try {
    refuseSwallowedOptions(command, process.env);
    const read = readArguments(command, argv);
    if (read === 'help') {
      process.stdout.write(`${command.help}\n`);
      return 0;
    }
    return await work(read.values, read.rest);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    const kind = command.kind === undefined ? '' : `${command.kind} `;
    process.stderr.write(
      `${error.message}\n\`npm run ${command.name} -- ${kind}--help\` says what it takes.\n`,
    );
    return 2;
  }
}

/**
 * Without `--` in front, npm takes options for itself, puts them into the environment and starts the command without
 * them: a build of another folder would quietly become a build of the demo.
 */
function refuseSwallowedOptions(
  { name, options }: Pick<Command<Readonly<Record<string, OptionKind>>>, 'name' | 'options'>,
  environment: Readonly<Record<string, string | undefined>>,
): void {
  if (environment.npm_lifecycle_event !== name) return;
  for (const option of Object.keys(options)) {
    const value = environment[`npm_config_${option.replaceAll('-', '_')}`];
    if (value !== undefined && value !== '')
      throw new UsageError(
        `npm kept the option --${option} for itself. Write \`--\` before the options: \`npm run ${name} -- --${option} …\`.`,
      );
  }
}

function readArguments<Options extends Readonly<Record<string, OptionKind>>>(
  command: Command<Options>,
  argv: readonly string[],
): 'help' | { readonly values: OptionValues<Options>; readonly rest: readonly string[] } {
  const kinds: Readonly<Record<string, OptionKind>> = { ...command.options, help: 'flag' };
  const { tokens } = parseArgs({
    args: [...argv],
    strict: false,
    tokens: true,
    allowPositionals: true,
    options: Object.fromEntries(
      Object.entries(kinds).map(([name, kind]) => [
        name,
        {
          type: kind === 'flag' ? ('boolean' as const) : ('string' as const),
          ...(name === 'help' ? { short: 'h' } : {}),
        },
      ]),
    ),
  });
  const values: Record<string, string | boolean | string[] | undefined> = {};
  for (const [name, kind] of Object.entries(kinds)) values[name] = nothingGiven(kind);
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') rest.push(token.value);
    if (token.kind !== 'option') continue;
    const kind = Object.hasOwn(kinds, token.name) ? kinds[token.name] : undefined;
    if (kind === undefined)
      throw new UsageError(unknownOption(command.name, token.rawName, Object.keys(kinds)));
    if (kind === 'flag' && token.value !== undefined)
      throw new UsageError(`The option --${token.name} takes no value, but "${token.value}" was given.`);
    if (kind !== 'flag' && (token.value === undefined || token.value === '' || /^--[a-z]/.test(token.value)))
      throw new UsageError(`The option --${token.name} needs a value after it.`);
    const before = values[token.name];
    values[token.name] = Array.isArray(before) ? [...before, token.value ?? ''] : (token.value ?? true);
  }
  if (values.help === true) return 'help';
  if (command.takes === null && rest.length > 0)
    throw new UsageError(`\`${command.name}\` takes options only, but "${rest[0]}" was given.`);
  // Every name of Options is in `values` with the type its kind says: set above, checked in the loop.
  return { values: values as OptionValues<Options>, rest };
}

function nothingGiven(kind: OptionKind): false | string[] | undefined {
  if (kind === 'flag') return false;
  return kind === 'values' ? [] : undefined;
}

function unknownOption(command: string, given: string, known: readonly string[]): string {
  const near = didYouMean(given.replace(/^-+/, ''), known);
  const hint = near === null ? '' : ` Did you mean --${near}?`;
  return `\`${command}\` has no option ${given}; it has ${known.map((name) => `--${name}`).join(', ')}.${hint}`;
}

/** One of a fixed set of words, the first where none was given. Throws a UsageError for another word. */
export function oneOf<Word extends string>(
  option: string,
  given: string | undefined,
  words: readonly [Word, ...Word[]],
): Word {
  if (given === undefined) return words[0];
  const found = words.find((word) => word === given);
  if (found === undefined)
    throw new UsageError(`The option --${option} takes ${words.join(', ')}, but "${given}" was given.`);
  return found;
}
