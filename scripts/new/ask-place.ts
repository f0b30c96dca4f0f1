import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { nearestSlug, slugFault } from '../../src/entries/folder/slug-rules.ts';
import { UsageError } from '../terminal/command-line.ts';
import type { Asker } from './asking.ts';
import { calledWithState, type KnownChallenge, knownChallenges } from './challenges.ts';
import { entriesIn } from './places.ts';

/** Asks in which challenge an aircraft is to fly, what it is called and which name its folder gets. */
export async function askNewEntry(folder: string, now: string, given: PlainMap, asker: Asker) {
  const enterable = knownChallenges(folder, now).filter(({ state }) => state !== 'final');
  const challenge = await chooseChallenge(asker, 'The one it is to fly in.', enterable);
  const name =
    typeof given.name === 'string'
      ? given.name
      : await type(asker, 'Name', 'Of the aircraft, as it should be shown. Such as Reedling', null);
  const entry = await askName(asker, 'Folder', nearestSlug(name));
  return { named: `${challenge}/${entry}`, fields: { ...given, name } };
}

/** Asks for which aircraft something is. */
export async function askEntry(folder: string, now: string, asker: Asker): Promise<string> {
  const known = knownChallenges(folder, now);
  const challenge = await chooseChallenge(asker, 'The one the aircraft flies in.', known);
  const entry = await choose(asker, 'Aircraft', 'By the name of its folder.', entriesIn(folder, challenge));
  return `${challenge}/${entry}`;
}

/** Asks for the name that something has in addresses. */
export function askName(asker: Asker, title: string, proposed: string | null): Promise<string> {
  return type(
    asker,
    title,
    'Its name in addresses, which stays for ever: a to z, digits and hyphens.',
    proposed,
    (typed) => slugFault(typed)?.fields.message ?? null,
  );
}

function chooseChallenge(asker: Asker, help: string, known: readonly KnownChallenge[]): Promise<string> {
  const words = known.map(({ id }) => id);
  return choose(asker, 'Challenge', help, words, known.map(calledWithState));
}

async function choose(
  asker: Asker,
  title: string,
  help: string,
  words: readonly string[],
  labels: readonly string[] = words,
): Promise<string> {
  if (words.length === 0) throw new UsageError(`There is no ${title.toLowerCase()} yet to choose from.`);
  return (await asker.ask({ title, help, words, labels, isOptional: false, check: () => null })) ?? '';
}

async function type(
  asker: Asker,
  title: string,
  help: string,
  proposed: string | null,
  check: (typed: string) => string | null = () => null,
): Promise<string> {
  const offer = proposed === null ? {} : { proposed };
  return (await asker.ask({ title, help, words: null, isOptional: false, ...offer, check })) ?? '';
}
