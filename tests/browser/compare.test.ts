import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage } from './watched-page.ts';

const site = inject('siteAddress');
const address = `${site}compare/`;
const two = '?of=slow-thread-2026/shuttle,slow-thread-2026/organza';
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
  return watched;
}

const names = (page: Page) => page.locator('.yours .heads .name').allTextContents();
const told = (page: Page) => page.locator('.told').textContent();

/** Waits until these are side by side, in their order. */
async function compared(page: Page, ...wanted: readonly string[]): Promise<void> {
  await page.waitForFunction(
    (list) =>
      [...document.querySelectorAll('.yours:not([hidden]) .heads .name')]
        .map((one) => one.textContent)
        .join() === list,
    wanted.join(),
  );
}

describe('aircraft side by side', () => {
  it('are those that the address names, fetched from the same site', async () => {
    const { page, errors, foreign, close } = await opened(two);
    await compared(page, 'Shuttle', 'Organza');
    expect(await told(page)).toBe('Compared: Shuttle and Organza.');
    expect(await page.locator('.example:visible').count()).toBe(0);
    // Two papers, of which the column's width shows one.
    expect(await page.locator('.yours svg.drawing:visible').count()).toBe(1);
    expect(errors).toEqual([]);
    expect(foreign).toEqual([]);
    await close();
  });

  it('have a split of their times that adds up', async () => {
    const { page, close } = await opened(two);
    await compared(page, 'Shuttle', 'Organza');
    const logs = (await page.locator('.yours .split tbody td:last-child').allTextContents()).map((text) =>
      Number.parseFloat(text.replace('\u2212', '-')),
    );
    // Three parts and their sum, each shown to two digits of its ±: here to hundredths.
    expect(logs).toHaveLength(4);
    const [height = 0, use = 0, sink = 0, total = 0] = logs;
    expect(Math.abs(height + use + sink - total)).toBeLessThanOrEqual(0.016);
    await close();
  });

  it('are chosen by keyboard alone', async () => {
    const { page, close } = await opened();
    await page.locator('.chooser input').focus();
    await page.keyboard.type('shutt');
    expect(await told(page)).toMatch(/^\d of \d+ aircraft\.$/);
    await page.keyboard.press('Enter');
    expect(await told(page)).toBe('Shuttle is chosen. Add one more to compare it with.');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('organza');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent?.trim())).toBe('Add');
    await page.keyboard.press('Enter');
    await compared(page, 'Shuttle', 'Organza');
    expect(new URL(page.url()).search).toBe(two);
    await close();
  });

  it('are found without the marks of their letters', async () => {
    const { page, close } = await opened();
    await page.locator('.chooser input').fill('dluga');
    expect(await page.locator('.chooser option').first().textContent()).toContain('Długa');
    await page.locator('.chooser input').fill('no such aircraft');
    expect(await told(page)).toMatch(/^0 of \d+ aircraft\.$/);
    await close();
  });

  it('come back after a reload, and with the way back', async () => {
    const { page, close } = await opened(two);
    await compared(page, 'Shuttle', 'Organza');
    await page.getByRole('button', { name: 'Remove Shuttle' }).click();
    await page.locator('.yours').waitFor({ state: 'hidden' });
    expect(new URL(page.url()).search).toBe('?of=slow-thread-2026/organza');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'Remove Organza',
    );
    await page.goBack();
    await compared(page, 'Shuttle', 'Organza');
    await page.reload();
    await compared(page, 'Shuttle', 'Organza');
    await close();
  });

  it('are four at most', async () => {
    const { page, close } = await opened(two);
    const ids = await page
      .locator('.chooser option')
      .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
    await page.goto(`${address}?of=${ids.slice(0, 5).join(',')}`);
    await page.waitForFunction(() => document.querySelectorAll('.yours .heads li').length === 4);
    expect(await told(page)).toMatch(/^The address names more than four aircraft/);
    await page.locator('.chooser select').selectOption(ids[5] ?? '');
    await page.getByRole('button', { name: 'Add' }).click();
    expect(await told(page)).toBe('Four are chosen: remove one to add another.');
    await close();
  });

  it('leave out with a sentence what is not there', async () => {
    const { page, errors, close } = await opened(`${two},slow-thread-2026/<b>`);
    await compared(page, 'Shuttle', 'Organza');
    expect(await told(page)).toContain('This site has no aircraft “slow-thread-2026/<b>”');
    expect(errors).toEqual([]);
    await close();
  });

  it('say so where their figures cannot be fetched', async () => {
    const { page, close } = await opened();
    await page.route('**/organza.json', (route) => route.fulfill({ status: 503 }));
    await page.goto(address + two);
    await page.waitForFunction(() => document.querySelector('.told')?.textContent?.includes('Organza'));
    expect(await told(page)).toMatch(/^The figures of Organza could not be fetched/);
    expect(await names(page)).toEqual([]);
    await close();
  });

  it('are linked from the page of an aircraft, with the leader', async () => {
    const { page, close } = await opened();
    await page.goto(`${site}entries/slow-thread-2026/shuttle/`);
    await page.getByRole('link', { name: /^Compare with .*, the leader$/ }).click();
    await page.waitForFunction(() => document.querySelectorAll('.yours .heads li').length === 2);
    expect((await names(page))[0]).toBe('Shuttle');
    await close();
  });

  it.for(['light', 'dark'] as const)('have nothing that axe objects to, in %s', async (colorScheme) => {
    const { page, close } = await opened(two, { colorScheme });
    await compared(page, 'Shuttle', 'Organza');
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    await page.evaluate(axe.source);
    const results = await page.evaluate(() =>
      window.axe.run(document, {
        runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
      }),
    );
    expect(results.passes.length).toBeGreaterThan(10);
    expect(
      results.violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`),
    ).toEqual([]);
    await close();
  });

  it('need no sideways scrolling at 320 px, four at once', async () => {
    const four = `${two},slow-thread-2025/dluga-nic,hall-thread-2026/two-spools`;
    const { page, close } = await opened(four, { viewport: { width: 320, height: 700 } });
    await page.waitForFunction(() => document.querySelectorAll('.yours .heads li').length === 4);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await close();
  });
});

describe('with scripts off', () => {
  it('the first two of a challenge are compared all the same', async () => {
    const { page, close } = await opened('', { javaScriptEnabled: false });
    expect(await page.locator('.chooser').isVisible()).toBe(false);
    expect(await page.locator('.without-scripts').isVisible()).toBe(true);
    expect(await page.locator('.example .heads .name').first().isVisible()).toBe(true);
    expect(await page.locator('.example svg.drawing:visible').first().isVisible()).toBe(true);
    expect(await page.locator('.example .split').first().isVisible()).toBe(true);
    await close();
  });
});
