import type { Content } from '../entries/folder/content.ts';

/** The pages that each challenge has, below its own address. */
const pagesOfChallenge = ['', 'rules/', 'records/', 'plot/', 'awaiting/'];

/**
 * Old addresses and where they lead now, from every file's `formerly`. An old challenge name leads on for its board,
 * its other pages and all of its entries: by their names of today and of then, and those left out to the page that says so.
 */
export function redirectsOf(content: Content): ReadonlyMap<string, string> {
  const redirects = new Map<string, string>();
  const entries = content.entries.map(({ value }) => value);
  const results = new Map(content.results.map(({ value }) => [value.challenge.id, value.entries]));

  for (const { value: challenge } of content.challenges)
    for (const old of challenge.formerly) {
      for (const page of pagesOfChallenge)
        redirects.set(`/challenges/${old}/${page}`, `/challenges/${challenge.id}/${page}`);
      for (const entry of entries)
        if (entry.challenge === challenge.id)
          for (const name of [...entry.formerly, entry.id])
            redirects.set(`/entries/${old}/${name}/`, `/entries/${challenge.id}/${entry.id}/`);
      // Entries that only a final result still tells of have their page under the name of today.
      for (const { id } of results.get(challenge.id) ?? [])
        if (!redirects.has(`/entries/${old}/${id}/`))
          redirects.set(`/entries/${old}/${id}/`, `/entries/${challenge.id}/${id}/`);
      for (const { challenge: home, entry } of content.leftOut)
        if (home === challenge.id) redirects.set(`/entries/${old}/${entry}/`, `/entries/${home}/${entry}/`);
    }
  for (const entry of entries)
    for (const old of entry.formerly)
      redirects.set(`/entries/${entry.challenge}/${old}/`, `/entries/${entry.challenge}/${entry.id}/`);
  for (const { value: builder } of content.builders)
    for (const old of builder.formerly) redirects.set(`/builders/${old}/`, `/builders/${builder.handle}/`);
  for (const { value: page } of content.pages)
    for (const old of page.formerly) redirects.set(`/${old}/`, `/${page.id}/`);
  for (const { value: batch } of content.batches)
    for (const old of batch.formerly) redirects.set(`/rubber/${old}/`, `/rubber/${batch.id}/`);
  for (const { value: post } of content.news)
    for (const old of post.formerly) redirects.set(`/news/${old}/`, `/news/${post.id}/`);

  // A folder that is left out has a page of its own, also where another entry once bore its name.
  for (const { challenge, entry } of content.leftOut) redirects.delete(`/entries/${challenge}/${entry}/`);
  return new Map([...redirects].sort(([a], [b]) => (a < b ? -1 : 1)));
}
