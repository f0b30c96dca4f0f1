import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressesFile, readAddresses } from '../../src/publish/addresses.ts';
import { type PageWeight, pageWeight } from './page-weight.ts';

/** All pages of a kind, and what the heaviest of them weighs. */
export interface WeighedKind {
  /** The address with a star for every name that content gives. */
  readonly kind: string;
  readonly pages: number;
  readonly heaviest: string;
  readonly weight: PageWeight;
}

/**
 * Weighs every page of a built site, kind by kind, in the order of their addresses. Rejects where the folder holds no
 * built site.
 *
 * @param base the site's base path, with a slash at both ends
 */
export async function weighedKinds(folder: string, base: string): Promise<WeighedKind[]> {
  const addresses = readAddresses(await readFile(join(folder, addressesFile), 'utf8'));
  if (addresses === null) throw new Error(`${folder} holds no list of its addresses.`);
  const kinds = new Map<string, WeighedKind>();
  for (const address of addresses.filter((one) => one.endsWith('/'))) {
    const weight = await pageWeight(folder, base, `${address.slice(1)}index.html`);
    const kind = kindOf(address);
    const before = kinds.get(kind);
    const heavier = before === undefined || total(weight) > total(before.weight);
    kinds.set(kind, {
      kind,
      pages: (before?.pages ?? 0) + 1,
      heaviest: heavier ? address : before.heaviest,
      weight: heavier ? weight : before.weight,
    });
  }
  return [...kinds.values()];
}

/** Pictures are left out: how many there are is the builder's choice. */
function total({ html, css, script, fonts }: PageWeight): number {
  return html + css + script + fonts;
}

function kindOf(address: string): string {
  return address
    .replace(/^\/entries\/[^/]+\/[^/]+\//, '/entries/*/*/')
    .replace(/^\/(builders|challenges|news|rubber)\/[^/]+\//, '/$1/*/');
}
