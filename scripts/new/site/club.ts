import type { CalendarDate } from '../../../src/model/calendar.ts';
import type { GeneratorSource } from './generator-source.ts';
import type { Season } from './season.ts';

/** The software of a repository's host: it decides how a request is checked and the site is published. */
export const forges = ['github', 'gitlab', 'forgejo'] as const;
export type Forge = (typeof forges)[number];

/** What a club's folder is made from; null where nobody has said it. */
export interface Club {
  readonly title: string;
  readonly club: string | null;
  readonly address: string | null;
  readonly forge: Forge;
  readonly repository: string | null;
  readonly sendTo: string | null;
  readonly licence: string | null;
  /** The challenge: its name in addresses, what it is called, its days. */
  readonly challenge: string;
  readonly challengeTitle: string;
  readonly season: Season;
  readonly generator: GeneratorSource;
  readonly today: CalendarDate;
}
