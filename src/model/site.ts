import type { CalendarDate } from './calendar.ts';

export interface Site {
  readonly format: 1;
  readonly title: string;
  readonly club: string | null;
  /** Where it is published; its path is the base path. */
  readonly address: string | null;
  readonly repository: {
    readonly kind: 'github' | 'gitlab' | 'forgejo';
    readonly url: string;
    readonly branch: string;
  } | null;
  readonly sendTo: string | null;
  readonly units: 'metric' | 'imperial';
  readonly featured: string | null;
  readonly logo: string | null;
  readonly accent: string | null;
  readonly links: readonly { readonly label: string; readonly url: string }[];
  readonly licence: string | null;
  readonly body: string;
}

export interface ClubPage {
  readonly id: string;
  readonly title: string;
  readonly order: number | null;
  readonly formerly: readonly string[];
  readonly body: string;
}

export interface Builder {
  readonly handle: string;
  readonly name: string | null;
  readonly club: string | null;
  readonly junior: boolean;
  readonly link: string | null;
  readonly formerly: readonly string[];
  readonly body: string;
}

export interface NewsPost {
  /** `<date>-<slug>`, the file's name. */
  readonly id: string;
  readonly date: CalendarDate;
  readonly title: string;
  readonly challenge: string | null;
  readonly summary: string | null;
  readonly formerly: readonly string[];
  readonly body: string;
}
