import { entrantsOf } from '../src/almanac/entrants.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { compareRules } from '../src/contest/compare/compare-rules.ts';
import { families, variantsOf } from '../src/contest/compare/variants.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { didYouMean } from '../src/entries/problems/did-you-mean.ts';
import { contentFolder } from './folders/content-folder.ts';
import { buildInstant } from './site/build-instant.ts';
import { oneOf, runCommand, UsageError } from './terminal/command-line.ts';
import { comparisonText, variantText } from './terminal/compare-text.ts';

const help = `npm run compare-rules -- <challenge> [--content DIR] [rules to try…] [--variant ID] [--format text|json]

For an organiser who is still choosing: the table as it stands, and who would move under other rules. One rule is
changed at a time. Without rules to try, the usual choices of every one are tried; several choices take commas.

  --method best,sum:3,mean:3     how flights become a score; also rounds, where the rules name them
  --resolution 0.01,0.1,1        seconds to which an official time is read
  --round down,nearest           how it is brought there
  --combine mean,median,lowest   how several watches become one time
  --maximum none,90 s,3:00       the cap of a flight; with rounds a share of every maximum: x0.5
  --scale none,span:-0.5         handicap: a figure of the model and its power
  --provisional apart,ranked     whether flights that wait for a ruling have places

  --variant ID    the whole table under one of them, such as method=sum:3
  --content DIR   the content folder (else content)
  --format        text for people (the default), json for programs
  --now ISO       the moment to judge for (else SOURCE_DATE_EPOCH, else the content folder's last commit)

Nothing is written. Exit code: 0, 1 where the challenge cannot be read, 2 for a wrong use.`;

const command = {
  name: 'compare-rules',
  help,
  options: {
    content: 'value',
    format: 'value',
    now: 'value',
    variant: 'value',
    method: 'value',
    resolution: 'value',
    round: 'value',
    combine: 'value',
    maximum: 'value',
    scale: 'value',
    provisional: 'value',
  },
  takes: '<challenge>',
} as const;

/** Prints what other rules would do to a challenge; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values, rest) => {
    const format = oneOf('format', values.format, ['text', 'json']);
    const [id, more] = rest;
    if (id === undefined || more !== undefined)
      throw new UsageError('`compare-rules` takes one challenge, such as slow-thread-2026.');
    const content = contentFolder(values.content, command.name);
    const read = await readContent(content);
    const challenge = read.challenges.find(({ value }) => value.id === id)?.value;
    if (challenge === undefined) {
      const known = read.challenges.map(({ value }) => value.id);
      const near = didYouMean(id, known);
      process.stderr.write(
        `There is no challenge "${id}" that can be read; there is ${known.join(', ') || 'none'}.${near === null ? '' : ` Did you mean "${near}"?`}\n`,
      );
      return 1;
    }
    const contenders = entrantsOf(read, sealFlights)
      .map(({ contender }) => contender)
      .filter(({ entry }) => entry.challenge === id);
    const variants = variantsOf(challenge, contenders, choicesIn(values));
    if ('fault' in variants) throw new UsageError(variants.fault);
    const now = await buildInstant(values.now, content, process.env);
    const comparison = compareRules(challenge, contenders, variants, now);
    const wanted = values.variant;
    const shown = comparison.variants.filter((variant) => wanted === undefined || variant.id === wanted);
    if (wanted !== undefined && shown.length === 0)
      throw new UsageError(
        `There is no variant "${wanted}" here; there is ${variants.map((variant) => variant.id).join(', ') || 'none'}.`,
      );
    const isFrozen = read.results.some(({ value }) => value.challenge.id === id);
    process.stdout.write(
      format === 'json'
        ? `${JSON.stringify(
            {
              format: 1,
              challenge: id,
              frozen: isFrozen,
              board: comparison.board,
              variants: shown.map(({ challenge: _, ...told }) => told),
            },
            null,
            2,
          )}\n`
        : wanted === undefined
          ? comparisonText(challenge, comparison, isFrozen)
          : shown.map((variant) => variantText(variant, comparison.board)).join('\n'),
    );
    return 0;
  });
}

/** The choices typed, by option. */
function choicesIn(
  values: Readonly<Record<string, string | undefined>>,
): ReadonlyMap<string, readonly string[]> {
  return new Map(
    families.flatMap(({ option }) => {
      const typed = values[option];
      return typed === undefined ? [] : [[option, typed.split(',').map((choice) => choice.trim())] as const];
    }),
  );
}
