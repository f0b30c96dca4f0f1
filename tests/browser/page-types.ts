import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readAddresses } from '../../src/publish/addresses.ts';

/** Kinds of page, each with how its address looks. The front page and the page for unknown addresses are added. */
const kinds: readonly (readonly [string, RegExp])[] = [
  ['challenges', /^\/challenges\/$/],
  ['board', /^\/challenges\/[^/]+\/$/],
  ['rules', /^\/challenges\/[^/]+\/rules\/$/],
  ['records', /^\/challenges\/[^/]+\/records\/$/],
  ['plot', /^\/challenges\/[^/]+\/plot\/$/],
  ['awaiting', /^\/challenges\/[^/]+\/awaiting\/$/],
  ['aircraft', /^\/entries\/[^/]+\/[^/]+\/$/],
  ['compare', /^\/compare\/$/],
  ['form', /^\/enter\/$/],
  ['builders', /^\/builders\/$/],
  ['builder', /^\/builders\/[^/]+\/$/],
  ['rubber', /^\/rubber\/$/],
  ['batch', /^\/rubber\/[^/]+\/$/],
  ['figures', /^\/figures\/$/],
  ['kinds of files', /^\/schema\/$/],
  ['fields of a file', /^\/schema\/entry\/$/],
  ['news', /^\/news\/$/],
  ['post', /^\/news\/[^/]+\/$/],
  ['left out', /^\/left-out\/$/],
  ['page of the club', /^\/how-to-measure\/$/],
];

/** All addresses of a built site, as it lists them. */
export async function addressesOfSite(folder: string): Promise<readonly string[]> {
  const addresses = readAddresses(await readFile(join(folder, 'addresses.json'), 'utf8'));
  if (addresses === null) throw new Error('The built site lists no addresses.');
  return addresses;
}

/** One address of every kind of page; throws where the site lacks a kind, so that no kind is forgotten. */
export async function onePageOfEachKind(folder: string): Promise<{ kind: string; path: string }[]> {
  const addresses = await addressesOfSite(folder);
  const found = kinds.map(([kind, look]) => {
    const address = addresses.find((one) => look.test(one));
    if (address === undefined) throw new Error(`The built site has no page of the kind: ${kind}.`);
    return { kind, path: address.slice(1) };
  });
  return [{ kind: 'front page', path: '' }, ...found, { kind: 'unknown address', path: '404.html' }];
}

/** The address of an aircraft with at least so many flights. */
export async function entryWithFlights(folder: string, count: number): Promise<string> {
  for (const address of await addressesOfSite(folder)) {
    if (!/^\/entries\/[^/]+\/[^/]+\/$/.test(address)) continue;
    const html = await readFile(join(folder, address, 'index.html'), 'utf8');
    if (html.includes(`id="flight-${count}"`)) return address.slice(1);
  }
  throw new Error(`The built site has no aircraft with ${count} flights.`);
}
