import type { Past } from '../../src/almanac/awaiting/for-organiser.ts';
import type { FileHistory } from '../../src/almanac/awaiting/handles-by-others.ts';
import type { RulesVersion } from '../../src/almanac/awaiting/rules-after-opening.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitFile } from '../../src/entries/source/split-file.ts';
import { understandChallenge } from '../../src/entries/understand/challenge.ts';
import { type Commit, commitsOf } from './commits.ts';
import { git } from './git.ts';

/** The history of a content folder, and sentences about what of it could not be looked at. */
export interface PastRead {
  readonly past: Past | null;
  readonly notLookedAt: readonly string[];
}

/** Reads who changed which file, and the rules of each challenge as of each commit. */
export async function pastOf(content: string, challenges: readonly string[]): Promise<PastRead> {
  const [all, mainline] = await Promise.all([commitsOf(content, false), commitsOf(content, true)]);
  if (all === null || mainline === null || all.length === 0)
    return {
      past: null,
      notLookedAt: [
        'The content folder has no history in git: whose handles these are and whether rules changed after the opening could not be looked at.',
      ],
    };
  const shallow = (await git(content, 'rev-parse', '--is-shallow-repository'))?.trim() === 'true';
  const notLookedAt = shallow
    ? ['The history in git is cut off: whatever came before its first commit here could not be looked at.']
    : [];
  const rules = new Map<string, readonly RulesVersion[]>();
  for (const id of challenges) {
    const { versions, unreadable } = await versionsOf(content, id, mainline);
    rules.set(id, versions);
    if (unreadable.length > 0)
      notLookedAt.push(
        `The rules of ${id} could not be read as they were in ${unreadable.join(', ')}: changes there are told with the next version.`,
      );
  }
  return { past: { files: filesOf(all), rules }, notLookedAt };
}

/** Who changed each file, in the order in which the files came in. */
export function filesOf(commits: readonly Commit[]): FileHistory[] {
  const histories = new Map<string, { first: number; authors: Set<string> }>();
  for (const [index, { author, files }] of commits.entries())
    for (const file of files) {
      const known = histories.get(file) ?? { first: index, authors: new Set<string>() };
      known.authors.add(author);
      histories.set(file, known);
    }
  return [...histories].map(([file, { first, authors }]) => ({ file, first, authors }));
}

async function versionsOf(content: string, id: string, commits: readonly Commit[]) {
  const file = `challenges/${id}.md`;
  const versions: RulesVersion[] = [];
  const unreadable: string[] = [];
  for (const { hash, date, files } of commits) {
    if (!files.includes(file)) continue;
    const version = hash.slice(0, 10);
    const text = await git(content, 'show', `${hash}:./${file}`);
    const { source } = text === null ? { source: null } : readSource(file, text, splitFile);
    const challenge = source === null ? null : understandChallenge(source, { id }).challenge;
    if (challenge === null) unreadable.push(version);
    else versions.push({ date, version, challenge });
  }
  return { versions, unreadable };
}
