import type { Batch } from '../../model/batch.ts';
import type { Condition } from '../../model/challenge.ts';
import type { Site } from '../../model/site.ts';

/** A challenge that an aircraft may be entered in, as the form needs it. */
export interface EnterChallenge {
  readonly id: string;
  readonly title: string;
  /** What it asks of an aircraft. */
  readonly conditions: readonly Condition[];
  /** The same as sentences, in that order. */
  readonly sentences: readonly string[];
  /** The folders of the entries that are there. */
  readonly taken: readonly string[];
}

/** What the page of the form knows of its site: plain data, in the page itself, since nothing is fetched. */
export interface EnterSite {
  readonly challenges: readonly EnterChallenge[];
  readonly batches: readonly Batch[];
  readonly repository: Site['repository'];
  readonly sendTo: string | null;
}
