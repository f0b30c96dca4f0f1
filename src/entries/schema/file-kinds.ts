import type * as z from 'zod';
import { batch } from './batch.ts';
import { builderFile } from './builder.ts';
import { challenge } from './challenge.ts';
import { entry } from './entry.ts';
import { frozenResult } from './frozen-result.ts';
import { news } from './news.ts';
import { page } from './page.ts';
import { ruling } from './ruling.ts';
import { site } from './site.ts';

/** One kind of file in a content folder. */
export interface FileKind {
  /** Its name in addresses, which is kept for ever. */
  readonly kind: string;
  /** In a title, such as `Entry`. */
  readonly title: string;
  /** What such a file is, in a sentence without its full stop. */
  readonly description: string;
  /** Where it stands below the content folder; what differs from file to file is in angle brackets. */
  readonly stands: string;
  /** Of its front matter; of the whole file where it is JSON. */
  readonly schema: z.core.$ZodType;
}

/** Every kind of file that has fields, the ones that most people write first. */
export const fileKinds: readonly FileKind[] = [
  {
    kind: 'entry',
    title: 'Entry',
    description: 'One aircraft in one challenge, with its setups and flights; its builder writes it',
    stands: 'entries/<challenge>/<entry>/entry.md',
    schema: entry,
  },
  {
    kind: 'builder',
    title: 'Builder',
    description: 'A person, once, where what entries say of their builder is not enough',
    stands: 'builders/<builder>.md',
    schema: builderFile,
  },
  {
    kind: 'rubber',
    title: 'Batch of rubber',
    description: 'A batch of rubber strip and its tests',
    stands: 'rubber/<batch>.md',
    schema: batch,
  },
  {
    kind: 'challenge',
    title: 'Challenge',
    description: 'One challenge, with its rules as fields; the organiser writes it',
    stands: 'challenges/<challenge>.md',
    schema: challenge,
  },
  {
    kind: 'ruling',
    title: 'Ruling',
    description: 'What the organiser decided about one entry and its flights',
    stands: 'rulings/<challenge>/<entry>.md',
    schema: ruling,
  },
  {
    kind: 'news',
    title: 'News',
    description: 'An announcement',
    stands: 'news/<date>-<name>.md',
    schema: news,
  },
  {
    kind: 'page',
    title: 'Page',
    description: 'A page of the club, such as how to measure',
    stands: 'pages/<page>.md',
    schema: page,
  },
  {
    kind: 'site',
    title: 'Site',
    description: 'The club, the address of its site, links, and the units shown first',
    stands: 'site.md',
    schema: site,
  },
  {
    kind: 'result',
    title: 'Final result',
    description: 'The frozen result of a challenge, as the command that closes it writes it; nobody edits it',
    stands: 'results/<challenge>.json',
    schema: frozenResult,
  },
];
