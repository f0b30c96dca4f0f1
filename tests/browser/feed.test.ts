import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage } from './watched-page.ts';

// The parser is Chromium's own. What a feed and an entry must have: RFC 4287, 4.1.1, 4.1.2, 4.2.6; dates: RFC 3339.

const atom = 'http://www.w3.org/2005/Atom';
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

describe('the feed', () => {
  it('is read by an XML parser, and has what the standard asks for', async () => {
    const text = await readFile(join(inject('siteFolder'), 'feed.xml'), 'utf8');
    const { page, close } = await openPage(browser, inject('siteAddress'));
    await page.goto(inject('siteAddress'));
    const read = await page.evaluate(
      ([xml = '', space = '']) => {
        const document = new DOMParser().parseFromString(xml, 'application/xml');
        const told = (parent: Element) =>
          ['id', 'title', 'updated'].map((name) =>
            [...parent.children]
              .filter((child) => child.namespaceURI === space && child.localName === name)
              .map((child) => child.textContent ?? ''),
          );
        return {
          fault: document.querySelector('parsererror')?.textContent ?? null,
          feed: told(document.documentElement),
          author: document.querySelector('feed > author > name')?.textContent,
          entries: [...document.querySelectorAll('entry')].map(told),
          links: [...document.querySelectorAll('link')].map((one) => one.getAttribute('href') ?? ''),
        };
      },
      [text, atom],
    );
    await close();
    expect(read.fault).toBeNull();
    expect(read.author).toBe('Tallowick Elastic Society');
    expect(read.entries.length).toBeGreaterThan(5);
    expect(read.entries.length).toBeLessThanOrEqual(60);
    for (const parts of [read.feed, ...read.entries]) {
      expect(parts.map((found) => found.length)).toEqual([1, 1, 1]);
      expect(parts[2]?.[0]).toMatch(/^\d{4}-\d{2}-\d{2}T00:00:00Z$/);
    }
    const ids = read.entries.map(([id]) => id?.[0] ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    expect(read.links.filter((href) => !href.startsWith('https://club.example/club/trials/'))).toEqual([]);
  });

  it('is announced by every page', async () => {
    const html = await readFile(join(inject('siteFolder'), 'news/index.html'), 'utf8');
    expect(html).toMatch(
      /<link rel="alternate" type="application\/atom\+xml"[^>]*href="\/club\/trials\/feed.xml"/,
    );
  });
});
