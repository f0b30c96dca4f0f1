import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { type Beginning, setNamed } from '../../src/entries/begin/beginning.ts';
import { fieldNamed } from '../../src/entries/begin/field-named.ts';
import { describeShape } from '../../src/entries/describe/describe-shape.ts';
import { contentFolder } from '../folders/content-folder.ts';
import { buildInstant } from '../site/build-instant.ts';
import { type OptionKind, runCommand, UsageError } from '../terminal/command-line.ts';
import { Left } from './asking.ts';

/** What a command of `new` was told. */
export interface Told {
  /** What stands beside the options; undefined where nothing does. */
  readonly named: string | undefined;
  readonly fields: PlainMap;
  readonly folder: string;
  /** The moment it is, ISO 8601. */
  readonly now: string;
  readonly isDryRun: boolean;
  /** Options of the kind's own. */
  readonly own: Readonly<Record<string, string | undefined>>;
}

/** How a kind is called at a terminal. */
export interface Kind {
  readonly name: string;
  readonly beginning: Beginning;
  /** What stands beside the options, such as `<challenge>/<entry>`. */
  readonly takes: string;
  readonly intro: string;
  /** Options that write no field by themselves, with what the help says of each. */
  readonly own?: Readonly<Record<string, string>>;
}

const common = { content: 'value', now: 'value', 'dry-run': 'flag' } as const;

/** Reads the arguments of a kind and does its work; gives the exit code. */
export function runNew(
  kind: Kind,
  argv: readonly string[],
  work: (told: Told) => Promise<number>,
): Promise<number> {
  const { beginning, takes } = kind;
  const options: Record<string, OptionKind> = {};
  for (const name of [...Object.keys(beginning.options), ...Object.keys(kind.own ?? {})])
    options[name] = 'value';
  const command = {
    name: 'new',
    kind: kind.name,
    help: helpOf(kind),
    options: { ...options, ...common, set: 'values' as const },
    takes,
  };
  return runCommand(command, argv, async (values, rest) => {
    const given: Readonly<Record<string, unknown>> = values;
    const [named, more] = rest;
    if (more !== undefined)
      throw new UsageError(`"${more}" is one word too many; put quotes around a value with spaces.`);
    const folder = contentFolder(values.content, command.name);
    const isSaid = values.now !== undefined || (process.env.SOURCE_DATE_EPOCH ?? '') !== '';
    const told = {
      named,
      fields: fieldsGiven(beginning, given, values.set),
      folder,
      // A command that writes down a day may ask what day it is; a build never does.
      now: isSaid ? await buildInstant(values.now, folder, process.env) : new Date().toISOString(),
      isDryRun: values['dry-run'],
      own: Object.fromEntries(Object.keys(kind.own ?? {}).map((name) => [name, text(given[name])])),
    };
    try {
      return await work(told);
    } catch (error) {
      if (!(error instanceof Left)) throw error;
      process.stderr.write('Nothing is written.\n');
      return 2;
    }
  });
}

/** The fields that options give, each as its file would say it. Throws a UsageError for a field there is none of. */
function fieldsGiven(
  { schema, options }: Beginning,
  given: Readonly<Record<string, unknown>>,
  set: readonly string[],
): PlainMap {
  const named = Object.entries(options).flatMap(([option, field]) => {
    const typed = text(given[option]);
    return typed === undefined ? [] : [{ field, typed }];
  });
  return [...named, ...set.map(assignment)].reduce<PlainMap>((fields, { field, typed }) => {
    const next = setNamed(schema, fields, field, typed);
    if (!next.ok) throw new UsageError(next.message);
    return next.fields;
  }, {});
}

function assignment(written: string): { readonly field: string; readonly typed: string } {
  const [, field, typed] = /^([^=\s]+)\s*=\s*(\S.*)$/s.exec(written) ?? [];
  if (field === undefined || typed === undefined)
    throw new UsageError(
      `The option --set takes a field and its value, such as --set "wing.incidence=3°", but "${written}" was given.`,
    );
  return { field, typed };
}

function text(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}

function helpOf({ name, takes, intro, beginning, own }: Kind): string {
  const shape = describeShape(beginning.schema);
  const ofFields = Object.entries(beginning.options).map(([option, field]) => {
    const found = fieldNamed(shape, field);
    const said = found.ok ? found.named.field : null;
    return [`--${option}`, said === null ? '' : `${said.description}, such as ${said.example}`] as const;
  });
  const others = [
    ...Object.entries(own ?? {}).map(([option, said]) => [`--${option}`, said] as const),
    ['--set', 'any field by its name, such as --set "wing.incidence=3°"; may be given again'],
    ['--content', 'the content folder (else content)'],
    ['--now', 'the moment it is, where a day is written down (else what the clock says)'],
    ['--dry-run', 'writes nothing and prints the file as it would be'],
  ] as const;
  const lines = [...ofFields, ...others].map(([option, said]) => `  ${option.padEnd(16)} ${said}`);
  return `npm run new -- ${name} ${takes} [options]\n\n${intro}\n\n${lines.join('\n')}\n\nExit code: 0, 2 for a wrong use.`;
}
