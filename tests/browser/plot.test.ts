import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { addressesOfSite } from './page-types.ts';
import { openPage } from './watched-page.ts';

const site = inject('siteAddress');
const path = (await addressesOfSite(inject('siteFolder'))).find((one) =>
  one.endsWith('/slow-thread-2026/plot/'),
);
if (path === undefined) throw new Error('The demo has no plot.');
const address = site + path.slice(1);
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

async function opened(search = '', options: Parameters<typeof openPage>[2] = {}) {
  const watched = await openPage(browser, site, options);
  await watched.page.goto(address + search);
  await watched.page.locator('.plot-side tbody tr').first().waitFor();
  return watched;
}

const heads = (page: Page) => page.locator('.plot-side thead th').allTextContents();
const status = (page: Page) => page.locator('.plot-status').textContent();

/** Numbers of the second column: what lies across. */
async function across(page: Page): Promise<number[]> {
  const cells = await page.locator('.plot-side tbody tr td:nth-of-type(1)').allTextContents();
  return cells.map((text) => Number.parseFloat(text));
}

describe('the plot', () => {
  it('is fetched from the same site, with no violation of its policy', async () => {
    const { page, errors, foreign, close } = await opened();
    expect(await status(page)).toMatch(/^\d+ aircraft shown/);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
    await close();
  });

  it('is chosen by keyboard alone, and its table, chart and address follow', async () => {
    const { page, close } = await opened();
    await page.locator('select[name="x"]').focus();
    // Typing the first letters of a choice picks it, in every browser.
    await page.keyboard.type('Span');
    await page.waitForFunction(() => location.search.includes('x=span'));
    expect((await heads(page))[1]).toBe('Span');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Space');
    await page.waitForFunction(() => location.search.includes('log=x'));
    expect(await page.locator('.plot-tool svg.chart title').textContent()).toBe('Best time against Span');
    const spans = await across(page);
    expect(spans.length).toBeGreaterThan(5);
    expect(spans).toEqual(spans.toSorted((a, b) => a - b));
    await close();
  });

  it('is the same again after a reload, and one step back on the way back', async () => {
    const { page, close } = await opened();
    const before = await heads(page);
    await page.locator('select[name="x"]').selectOption('span');
    await page.locator('select[name="division"]').selectOption({ index: 1 });
    await page.waitForFunction(() => location.search.includes('division='));
    await page.reload();
    await page.locator('.plot-side tbody tr').first().waitFor();
    expect((await heads(page))[1]).toBe('Span');
    expect(await page.locator('select[name="x"]').inputValue()).toBe('span');
    expect(await page.locator('select[name="division"]').inputValue()).not.toBe('');
    expect(await page.locator('.plot-tool svg .plot-dot.marked').count()).toBeGreaterThan(0);
    await page.goBack();
    await page.goBack();
    await expect.poll(() => heads(page)).toEqual(before);
    await close();
  });

  it('says in a sentence what it cannot follow in an address', async () => {
    const { page, close } = await opened('?x=wingspread&log=z');
    const notices = await page.locator('.plot-ignored .notice').allTextContents();
    expect(notices).toHaveLength(2);
    expect(notices[0]).toContain('“wingspread”');
    await page.locator('select[name="x"]').selectOption('span');
    await expect.poll(() => page.locator('.plot-ignored .notice').count()).toBe(0);
    await close();
  });

  it('swaps its axes, each with its own kind of scale', async () => {
    const { page, close } = await opened('?x=span&y=best-time&log=x');
    await page.getByRole('button', { name: 'Swap' }).click();
    await page.waitForFunction(() => location.search === '?x=best-time&y=span&log=y');
    expect((await heads(page)).slice(1)).toEqual(['Best time', 'Span']);
    await close();
  });

  it('takes in the aircraft of all challenges', async () => {
    const { page, close } = await opened();
    const before = await page.locator('.plot-side tbody tr').count();
    await page.getByLabel('Aircraft of all challenges').check();
    await expect.poll(() => page.locator('.plot-side tbody tr').count()).toBeGreaterThan(before);
    await close();
  });

  it('lists who is not shown, with the reason', async () => {
    const { page, close } = await opened();
    expect(await page.locator('.plot-side .plot-missing li').allTextContents()).toEqual(
      expect.arrayContaining([expect.stringMatching(/\S+: needs /)]),
    );
    await close();
  });

  it('shows the mark of the row that has the focus, and the row of the mark that is pressed', async () => {
    const { page, close } = await opened();
    const row = page.locator('.plot-side tbody tr').nth(2);
    const name = (await row.locator('a').textContent()) ?? '';
    await row.locator('a').focus();
    expect(await page.locator('.plot-here text').textContent()).toContain(name.slice(0, 8));
    const ring = page.locator('.plot-here circle');
    await page.locator('.plot-sheet').scrollIntoViewIfNeeded();
    const box = await ring.boundingBox();
    await page.locator('select[name="x"]').focus();
    expect(await page.locator('.plot-here').count()).toBe(0);
    await page.mouse.click((box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(name);
    expect(await row.getAttribute('class')).toBe('pointed');
    await close();
  });

  it('follows the switch of units', async () => {
    const { page, close } = await opened('?x=span&y=best-time');
    const metres = await across(page);
    await page.locator('#units-imperial').check();
    await expect.poll(async () => (await across(page))[0]).not.toBe(metres[0]);
    // One inch is 25.4 mm.
    expect((await across(page))[0]! / metres[0]!).toBeCloseTo(1 / 0.0254, 0);
    await close();
  });

  it('says so where the figures cannot be fetched', async () => {
    const { page, close } = await openPage(browser, site);
    await page.route('**/assets/plot/*.json', (route) => route.fulfill({ status: 404, body: 'none' }));
    await page.goto(address);
    await expect.poll(() => status(page)).toMatch(/could not be fetched/);
    expect(await page.locator('.fixed-plot svg').first().isVisible()).toBe(true);
    await close();
  });

  it('shows three fixed charts with their tables where scripts are off, and no control that does nothing', async () => {
    const { page, close } = await openPage(browser, site, { javaScriptEnabled: false });
    await page.goto(address);
    expect(await page.locator('.fixed-plot').count()).toBe(3);
    expect(await page.locator('.fixed-plot svg.chart:visible').count()).toBe(3);
    expect(await page.locator('.fixed-plot tbody tr').count()).toBeGreaterThan(20);
    expect(await page.locator('.plot-tool').isVisible()).toBe(false);
    await close();
  });

  it('needs no sideways scrolling at 320 px', async () => {
    const { page, close } = await opened('?challenges=all&bars=shown', {
      viewport: { width: 320, height: 700 },
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await close();
  });

  it.for(['light', 'dark'] as const)(
    'has nothing that axe objects to once drawn, in %s',
    async (colorScheme) => {
      const { page, close } = await opened('?x=span&y=best-time&division=light&bars=shown', { colorScheme });
      await page.locator('.plot-side tbody a').first().focus();
      await page.evaluate(axe.source);
      const results = await page.evaluate(() =>
        window.axe.run(document, {
          runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
        }),
      );
      expect(
        results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`),
      ).toEqual([]);
      await close();
    },
  );
});
