import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, inject, it } from 'vitest';
import { addressesOfSite } from './page-types.ts';

// What a page tells where its address is shared: the Open Graph protocol (ogp.me), "Basic Metadata" and "Structured Properties".

const folder = inject('siteFolder');
const site = 'https://club.example/club/trials/';
const addresses = (await addressesOfSite(folder)).filter((address) => address.endsWith('/'));

const heads = new Map<string, string>();
for (const address of addresses) {
  const html = await readFile(join(folder, address, 'index.html'), 'utf8');
  heads.set(address, html.slice(0, html.indexOf('</head>')));
}

function told(head: string): Map<string, string> {
  const found = head.matchAll(/<meta (?:property|name)="((?:og|twitter):[^"]+)" content="([^"]*)">/g);
  return new Map([...found].map(([, name = '', content = '']) => [name, content]));
}

const open = [...heads].filter(([, head]) => !head.includes('content="noindex"'));
const closed = [...heads].filter(([, head]) => head.includes('content="noindex"'));
const boards = open.filter(([address]) => /^\/(?:challenges\/[^/]+\/(?:[a-z]+\/)?)?$/.test(address));
const entries = open.filter(([address]) => address.startsWith('/entries/'));

describe('a page whose address is shared', () => {
  it.each(open)('%s tells title, kind and address', (address, head) => {
    const tags = told(head);
    expect([tags.get('og:type'), tags.get('og:url')]).toEqual(['website', `${site}${address.slice(1)}`]);
    expect(tags.get('og:title')).toMatch(/\S/);
    expect(tags.get('og:description')).toMatch(/\S/);
  });

  it.each([...boards, ...entries])(
    '%s shows a picture that is there, of the size it says',
    async (_, head) => {
      const tags = told(head);
      const address = tags.get('og:image') ?? '';
      expect(address.startsWith(site)).toBe(true);
      const picture = await sharp(join(folder, address.slice(site.length))).metadata();
      expect([String(picture.width), String(picture.height), `image/${picture.format}`]).toEqual([
        tags.get('og:image:width'),
        tags.get('og:image:height'),
        tags.get('og:image:type'),
      ]);
      expect(tags.get('og:image:alt')).toMatch(/\S/);
      expect(tags.get('twitter:card')).toBe('summary_large_image');
    },
  );

  it('shows the card of its challenge where the aircraft has no photo', () => {
    const cards = entries.filter(([, head]) => told(head).get('og:image')?.includes('/assets/cards/'));
    expect(cards.length).toBeGreaterThan(0);
    expect(cards.length).toBeLessThan(entries.length);
    for (const [address, head] of cards)
      expect(told(head).get('og:image')).toContain(`/assets/cards/${address.split('/')[2]}-`);
  });
});

describe('a page that asks not to be found', () => {
  it('is there', () => {
    expect(closed.length).toBeGreaterThan(3);
  });

  it.each(closed)('%s tells other sites nothing', (_, head) => {
    expect([...told(head)]).toEqual([]);
  });

  it.each(closed)('%s is in no list for search engines', async (address) => {
    const list = await readFile(join(folder, 'sitemap.xml'), 'utf8');
    expect(list).toContain(`<loc>${site}</loc>`);
    expect(list).not.toContain(`<loc>${site}${address.slice(1)}</loc>`);
  });
});
