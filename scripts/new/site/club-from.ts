import { nearestSlug } from '../../../src/entries/folder/slug-rules.ts';
import { oneOf, UsageError } from '../../terminal/command-line.ts';
import { printable } from '../../terminal/printable.ts';
import { goodName } from '../places.ts';
import { type Club, type Forge, forges } from './club.ts';
import { faultOfSite } from './fault-of-site.ts';
import { fetchAddress, type GeneratorSource } from './generator-source.ts';
import { seasonFor } from './season.ts';

/** What may be said of a club's folder. */
export const siteOptions = {
  title: 'value',
  club: 'value',
  address: 'value',
  repository: 'value',
  kind: 'value',
  'send-to': 'value',
  licence: 'value',
  challenge: 'value',
  opens: 'value',
  closes: 'value',
} as const;

export type SiteValues = { readonly [Name in keyof typeof siteOptions]: string | undefined };

/** What is known without being told. */
export interface Known {
  /** The name of the new folder. */
  readonly folder: string;
  readonly today: string;
  readonly generator: GeneratorSource;
}

/** The club as it is told, and as it follows from that. Throws a UsageError for what `site.md` could not say. */
export function clubFrom(values: SiteValues, { folder, today, generator }: Known): Club {
  const title = values.title ?? titleOf(folder);
  const repository = repositoryOf(values.repository);
  const address = values.address ?? (repository === null ? null : proposedAddress(repository));
  for (const [key, text] of Object.entries({ ...values, title, repository, address }))
    refuseFault(key, text ?? null);
  const season = seasonFor(today, values);
  const year = season.opens.slice(0, 4);
  const challengeTitle = title.includes(year) ? title : `${title} ${year}`;
  const challenge = values.challenge ?? nearestSlug(challengeTitle) ?? `season-${year}`;
  goodName(challenge);
  return {
    title,
    club: values.club ?? null,
    address,
    forge: forgeOf(values.kind, repository),
    repository,
    sendTo: values['send-to'] ?? null,
    licence: values.licence ?? null,
    challenge,
    challengeTitle,
    season,
    generator,
    today,
  };
}

/** `our-club` → `Our Club`. */
export function titleOf(folder: string): string {
  const words = folder.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== '');
  const title = words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join(' ');
  return title === '' || faultOfSite('title', title) !== null ? 'Our Duration Challenge' : title;
}

/** Where a repository on github.com is published unless its owner chooses otherwise; null for other hosts. */
export function proposedAddress(repository: string): string | null {
  const [, owner, name] =
    /^https:\/\/github\.com\/([\w-]+)\/([\w.-]+?)(?:\.git)?\/?$/i.exec(repository) ?? [];
  if (owner === undefined || name === undefined) return null;
  const host = `${owner.toLowerCase()}.github.io`;
  return name.toLowerCase() === host ? `https://${host}/` : `https://${host}/${name}/`;
}

/** The web address of a repository as it was typed, that for ssh included. Throws a UsageError for anything else. */
export function repositoryOf(typed: string | undefined): string | null {
  if (typed === undefined) return null;
  const address = fetchAddress(typed);
  if (address !== null) return address.replace(/\.git$/, '');
  throw new UsageError(
    `The option --repository takes the web address of a repository, such as https://forge.example/our-club/duration, but "${printable(typed)}" was given.`,
  );
}

function forgeOf(kind: string | undefined, repository: string | null): Forge {
  if (kind !== undefined) return oneOf('kind', kind, forges);
  if (repository === null) return 'github';
  const host = new URL(repository).hostname;
  const named = forges.find((forge) => host.includes(forge));
  if (named !== undefined) return named;
  throw new UsageError(
    `${host} does not say which software it runs. Say it with --kind: ${forges.join(', ')}.`,
  );
}

function refuseFault(key: string, text: string | null): void {
  const fault = text === null ? null : faultOfSite(key, text);
  if (fault !== null) throw new UsageError(`${fault}\nNothing is written.`);
}
