import { git } from '../history/git.ts';
import { UsageError } from '../terminal/command-line.ts';

/**
 * The moment a command takes for now, ISO 8601 in UTC: what --now says, else SOURCE_DATE_EPOCH, else the last commit
 * that touched the content folder. The machine's clock is never asked, so that the same content gives the same site.
 * Throws a UsageError where none of the three is there.
 */
export async function buildInstant(
  given: string | undefined,
  content: string,
  environment: Readonly<Record<string, string | undefined>>,
): Promise<string> {
  if (given !== undefined) return fromArgument(given);
  const epoch = environment.SOURCE_DATE_EPOCH;
  if (epoch !== undefined && epoch !== '') return fromEpoch(epoch);
  const committed = await lastCommit(content);
  if (committed !== null) return committed;
  throw new UsageError(
    `The moment to build for is not known: ${content} has no commit in a git repository, and the clock is not read. ` +
      'Say it with --now, such as --now 2027-05-02T08:00:00Z, or set SOURCE_DATE_EPOCH.',
  );
}

function fromArgument(text: string): string {
  const whole = /^\d{4}-\d{2}-\d{2}$/.test(text) ? `${text}T00:00:00Z` : text;
  const shape = /^(\d{4}-\d{2}-\d{2})T\d{2}:\d{2}(?::\d{2}(?:\.\d{1,9})?)?(?:Z|[+-]\d{2}:\d{2})$/.exec(whole);
  const milliseconds = shape === null ? Number.NaN : Date.parse(whole);
  const day = shape?.[1] ?? '';
  // Date.parse takes 31 April for 1 May: the day must come back as it was written.
  if (Number.isNaN(milliseconds) || new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10) !== day)
    throw new UsageError(
      `The option --now takes a date or a moment with its offset, such as 2027-05-02 or 2027-05-02T08:00:00Z, ` +
        `but "${text}" was given.`,
    );
  return inSeconds(milliseconds);
}

function fromEpoch(text: string): string {
  if (!/^\d{1,11}$/.test(text))
    throw new UsageError(
      `SOURCE_DATE_EPOCH holds whole seconds since 1970, such as 1809158400, but is "${text}".`,
    );
  return inSeconds(Number(text) * 1000);
}

async function lastCommit(content: string): Promise<string | null> {
  const told = await git(content, 'log', '-1', '--format=%ct', '--', '.');
  return told !== null && /^\d+\s*$/.test(told) ? inSeconds(Number(told) * 1000) : null;
}

function inSeconds(milliseconds: number): string {
  return `${new Date(milliseconds).toISOString().slice(0, 19)}Z`;
}
