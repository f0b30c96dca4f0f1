import type { Batch } from '../../model/batch.ts';
import type { Challenge, ChallengeState } from '../../model/challenge.ts';
import type { Site } from '../../model/site.ts';

/** A challenge that an aircraft may be entered in, as the form needs it. */
export interface EnterChallenge {
  readonly id: string;
  readonly title: string;
  readonly state: ChallengeState;
  /** Without the organiser's own words. */
  readonly rules: Challenge;
  /** What it asks of an aircraft as sentences, in the order of the rules. */
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
