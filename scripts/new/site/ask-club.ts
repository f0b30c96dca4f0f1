import { describeFields } from '../../../src/entries/describe/describe-shape.ts';
import { site } from '../../../src/entries/schema/site.ts';
import { UsageError } from '../../terminal/command-line.ts';
import type { Asker } from '../asking.ts';
import { forges } from './club.ts';
import {
  clubFrom,
  type Known,
  proposedAddress,
  repositoryOf,
  type SiteValues,
  titleOf,
} from './club-from.ts';
import { addressGiven } from './generator-source.ts';

/** In the order of asking: where the folder lives proposes where its site is published. */
const asked = ['title', 'club', 'repository', 'address', 'send-to', 'licence'] as const;

/** Where a field's own example is not what is typed here. */
const examples: Readonly<Record<string, string>> = {
  repository: 'https://forge.example/our-club/duration',
};

/** Asks for what is not said yet, one thing after another. Throws Left where the one who is asked leaves. */
export async function askClub(given: SiteValues, known: Known, asker: Asker): Promise<SiteValues> {
  const fields = describeFields(site);
  let values = given;
  for (const key of asked) {
    if (values[key] !== undefined) continue;
    const { title = key, description = '', example = '' } = fields.find((field) => field.key === key) ?? {};
    const before = values;
    const proposed = proposal(key, before, known);
    const answer = await asker.ask({
      title,
      help: `${description}. Such as ${examples[key] ?? example}`,
      words: null,
      isOptional: key !== 'title',
      ...(proposed === null ? {} : { proposed }),
      check: (typed) => faultOf({ ...before, kind: before.kind ?? 'github', [key]: typed }, known),
    });
    if (answer !== null) values = { ...values, [key]: answer };
    if (key === 'repository') values = { ...values, kind: await askKind(values, known, asker) };
  }
  return values;
}

/** Asks where the generator is fetched from, where this copy cannot tell; null where nobody knows yet. */
export function askGenerator(asker: Asker): Promise<string | null> {
  return asker.ask({
    title: 'Generator',
    help: 'Where the generator can be fetched from by anybody: the web address of its repository. Such as https://code.example/tools/last-turn',
    words: null,
    isOptional: true,
    check: (typed) => (addressGiven(typed) === null ? 'That is no web address of a repository.' : null),
  });
}

function proposal(key: (typeof asked)[number], values: SiteValues, { folder }: Known): string | null {
  if (key === 'title') return titleOf(folder);
  const repository = key === 'address' ? repositoryOf(values.repository) : null;
  return repository === null ? null : proposedAddress(repository);
}

/** The software of the host, where its address does not tell. */
async function askKind(values: SiteValues, known: Known, asker: Asker): Promise<string | undefined> {
  if (values.kind !== undefined || faultOf(values, known) === null) return values.kind;
  const answer = await asker.ask({
    title: 'Kind',
    help: 'The software of the host.',
    words: forges,
    isOptional: false,
    check: () => null,
  });
  return answer ?? undefined;
}

function faultOf(values: SiteValues, known: Known): string | null {
  try {
    clubFrom(values, known);
    return null;
  } catch (error) {
    if (error instanceof UsageError) return error.message;
    throw error;
  }
}
