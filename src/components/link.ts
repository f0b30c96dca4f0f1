import { choiceQuery } from '../compare/address.ts';

/**
 * The address of a page or file of this site, with the base path in front: the one place where it is added.
 * Takes a site path such as `/entries/a/b/` (with or without the first slash).
 */
export function link(path: string): string {
  return `${import.meta.env.BASE_URL.replace(/\/+$/, '')}/${path.replace(/^\/+/, '')}`;
}

/** Site path of a challenge's board. */
export function boardPath(challenge: string): string {
  return `/challenges/${challenge}/`;
}

/** Site path of a challenge's rules. */
export function rulesPath(challenge: string): string {
  return `/challenges/${challenge}/rules/`;
}

/** Site path of a challenge's records and history. */
export function recordsPath(challenge: string): string {
  return `/challenges/${challenge}/records/`;
}

/** Site path of a challenge's plot of any two figures. */
export function plotPath(challenge: string): string {
  return `/challenges/${challenge}/plot/`;
}

/** Site path of what such a plot is drawn from; not promised to stay. */
export function plotDataPath(challenge: string): string {
  return `/assets/plot/${challenge}.json`;
}

/** Site path of every figure of a challenge's aircraft as a table, for a spreadsheet. */
export function challengeTablePath(challenge: string): string {
  return `/data/${challenge}.csv`;
}

/** Site path of what a challenge waits for. */
export function awaitingPath(challenge: string): string {
  return `/challenges/${challenge}/awaiting/`;
}

/** Site path of aircraft side by side, each as `<challenge>/<entry>`; of the page to choose them on for none. */
export function comparePath(aircraft: readonly string[] = []): string {
  return `/compare/${choiceQuery(aircraft)}`;
}

/** Site path of the form for an entry. */
export const enterPath = '/enter/';

/** Site path of the form for a new aircraft in a challenge. */
export function enterChallengePath(challenge: string): string {
  return `${enterPath}?challenge=${challenge}`;
}

/** Site path of the form with the file of an aircraft, to add a flight or change something. */
export function changeEntryPath(challenge: string, entry: string): string {
  return `${enterPath}?entry=${challenge}/${entry}`;
}

/** Site path below which the files of aircraft stand, letter for letter; not promised to stay. */
export const entryFilesPath = '/assets/entries/';

/** Site path of the file of an aircraft. */
export function entryFilePath(challenge: string, entry: string): string {
  return `${entryFilesPath}${challenge}/${entry}.md`;
}

/** Site path of one aircraft. */
export function entryPath(challenge: string, entry: string): string {
  return `/entries/${challenge}/${entry}/`;
}

/** Site path of a builder. */
export function builderPath(handle: string): string {
  return `/builders/${handle}/`;
}

/** Site path of a news post. */
export function newsPath(post: string): string {
  return `/news/${post}/`;
}

/** Site path of the feed. */
export const feedPath = '/feed.xml';

/** Site path of a batch of rubber. */
export function batchPath(batch: string): string {
  return `/rubber/${batch}/`;
}

/** Site path of what files of a kind may hold; each field there has its keys as its mark, such as `#wing.span`. */
export function schemaPath(kind: string): string {
  return `/schema/${kind}/`;
}

/** Site path of the JSON Schema of a kind of file. */
export function schemaDataPath(kind: string): string {
  return `/schema/${kind}.json`;
}
