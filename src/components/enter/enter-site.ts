import type { Almanac } from '../../almanac/almanac.ts';
import type { EnterSite } from '../../client/enter/site-data.ts';
import { conditionSentence } from '../rule-sentences.ts';

/** What the form needs to know of the site: the challenges to which something can still be handed in, the rubber, the ways in. */
export function enterSite({ challenges, batches, site }: Almanac): EnterSite {
  return {
    challenges: challenges
      .filter(({ state }) => state !== 'final')
      .map(({ challenge, state, entries }) => ({
        id: challenge.id,
        title: challenge.title,
        state,
        // What people wrote of it is no matter of checking.
        rules: { ...challenge, body: '', amendments: [] },
        sentences: challenge.eligibility.map(conditionSentence),
        taken: entries.map(({ entry }) => entry.id).sort(),
      })),
    // What people wrote of a batch is no matter of figures.
    batches: batches.map(({ batch }) => ({ ...batch, body: '' })),
    repository: site.repository,
    sendTo: site.sendTo,
  };
}
