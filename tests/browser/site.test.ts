import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { entryWithFlights, onePageOfEachKind } from './page-types.ts';
import { openPage } from './watched-page.ts';

const address = inject('siteAddress');
const pages = await onePageOfEachKind(inject('siteFolder'));
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

/** What a page says; a tool that needs a script, marked as such, is beside the point. */
function textBesideTools(page: Page): Promise<string> {
  return page.locator('main').evaluate((main) => {
    const copy = main.cloneNode(true) as Element;
    for (const tool of copy.querySelectorAll('[data-tool]')) tool.remove();
    return copy.textContent?.trim() ?? '';
  });
}

describe.for(pages)('$kind, at /$path', ({ path }) => {
  it('opens below the base path with no error, no violation of its policy and no request to another host', async () => {
    const { page, errors, foreign, close } = await openPage(browser, address);
    const response = await page.goto(address + path);
    expect(response?.status()).toBe(200);
    // The style sheets arrived: without them the body's own margin of 8 px would stand.
    expect(await page.evaluate(() => getComputedStyle(document.body).margin)).toBe('0px');
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
    await close();
  });

  it('says the same with scripts off', async () => {
    const on = await openPage(browser, address);
    const off = await openPage(browser, address, { javaScriptEnabled: false });
    await on.page.goto(address + path);
    await off.page.goto(address + path);
    const text = await textBesideTools(off.page);
    expect(text).toMatch(/\w/);
    expect(text).toBe(await textBesideTools(on.page));
    await on.close();
    await off.close();
  });

  // WCAG 2.2, success criterion 1.4.10: no scrolling in two directions at a width of 320 CSS pixels.
  it('needs no sideways scrolling at 320 px', async () => {
    const { page, close } = await openPage(browser, address, { viewport: { width: 320, height: 700 } });
    await page.goto(address + path);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await close();
  });

  // A formula cannot be broken into lines, so it must fit.
  it('has no formula that is cut at 320 px', async () => {
    const { page, close } = await openPage(browser, address, { viewport: { width: 320, height: 700 } });
    await page.goto(address + path);
    const cut = await page.evaluate(() =>
      [...document.querySelectorAll('.formula math')]
        .filter(
          (math) =>
            math.getBoundingClientRect().right >
            (math.closest('.formula')?.getBoundingClientRect().right ?? 0),
        )
        .map((math) => math.textContent),
    );
    expect(cut).toEqual([]);
    await close();
  });

  it.for(['light', 'dark'] as const)('has nothing that axe objects to, in %s', async (colorScheme) => {
    const { page, close } = await openPage(browser, address, { colorScheme });
    await page.goto(address + path);
    await page.evaluate(axe.source);
    const results = await page.evaluate(() =>
      window.axe.run(document, {
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      }),
    );
    // Axe looked at real things: a page that did not load would have nothing to object to either.
    expect(results.passes.length).toBeGreaterThan(10);
    expect(
      results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`),
    ).toEqual([]);
    await close();
  });
});

describe('keyboard', () => {
  it('reaches the content first, by the skip link', async () => {
    const { page, close } = await openPage(browser, address);
    await page.goto(address);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('href'))).toBe('#content');
    await page.keyboard.press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('content');
    await close();
  });
});

describe('flights of an aircraft that has many', () => {
  const folder = inject('siteFolder');

  it('are folded, and one opens from the ledger of times', async () => {
    const { page, close } = await openPage(browser, address, { javaScriptEnabled: false });
    await page.goto(address + (await entryWithFlights(folder, 5)));
    const flight = page.locator('#flight-4');
    expect(await flight.isVisible()).toBe(false);
    await page.locator('.times a[href="#flight-4"]').click();
    await flight.waitFor({ state: 'visible', timeout: 2000 });
    expect(await page.locator('#flight-3').isVisible()).toBe(false);
    await close();
  });

  it('are all open on paper, and nothing runs over its edge', async () => {
    // A4 at 96 dots to the inch, less margins of 12 mm.
    const { page, close } = await openPage(browser, address, { viewport: { width: 704, height: 1000 } });
    await page.goto(address + (await entryWithFlights(folder, 5)));
    await page.emulateMedia({ media: 'print' });
    const heights = await page
      .locator('.flight-body')
      .evaluateAll((bodies) => bodies.map((body) => body.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThanOrEqual(5);
    expect(Math.min(...heights)).toBeGreaterThan(50);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(704);
    await close();
  });
});

describe('a board on a phone', () => {
  // The demo's board with the most tables.
  const board = 'challenges/slow-thread-2026/';

  it('is folded into cards: nothing on it scrolls sideways', async () => {
    const { page, close } = await openPage(browser, address, { viewport: { width: 360, height: 740 } });
    await page.goto(address + board);
    const hidden = await page
      .locator('.scroll')
      .evaluateAll((regions) => regions.map((region) => region.scrollWidth - region.clientWidth));
    expect(hidden.length).toBeGreaterThan(2);
    expect(Math.max(...hidden)).toBeLessThanOrEqual(0);
    await close();
  });

  it('is still a table to a screen reader', async () => {
    const { page, close } = await openPage(browser, address, { viewport: { width: 360, height: 740 } });
    await page.goto(address + board);
    const session = await page.context().newCDPSession(page);
    const { nodes } = await session.send('Accessibility.getFullAXTree');
    const count = (role: string) => nodes.filter((node) => node.role?.value === role).length;
    const rows = await page.locator('.fold tr').count();
    expect(rows).toBeGreaterThan(10);
    expect(count('row')).toBe(rows);
    expect(count('table')).toBe(await page.locator('.fold').count());
    expect(count('columnheader')).toBe(await page.locator('.fold thead th').count());
    expect(count('cell')).toBe(await page.locator('.fold td').count());
    await close();
  });
});

describe('the guards themselves', () => {
  it('see an error of the console, a refused request and a fault of accessibility', async () => {
    const { page, errors, foreign, close } = await openPage(browser, address);
    await page.goto(address);
    await page.evaluate(() => {
      const picture = document.createElement('img');
      picture.src = 'https://other.example/picture.png';
      document.querySelector('main')?.append(picture);
    });
    await expect.poll(() => errors.length + foreign.length).toBeGreaterThan(0);
    await page.evaluate(axe.source);
    const results = await page.evaluate(() => window.axe.run(document, { runOnly: ['wcag2a'] }));
    expect(results.violations.map(({ id }) => id)).toContain('image-alt');
    await close();
  });
});
