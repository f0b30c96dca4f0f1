import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import axe from 'axe-core';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage } from './watched-page.ts';

const path = 'challenges/slow-thread-2026/';
const address = inject('siteAddress') + path;
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

/** The board of the demo, at an address with this query. */
async function board(query = '', options: BrowserContextOptions = {}) {
  const opened = await openPage(browser, inject('siteAddress'), options);
  await opened.page.goto(address + query);
  return opened;
}

/** The same page with so many rows above the target line, alike but for name, place and span; one stays below it. */
async function longBoard(count: number, options: BrowserContextOptions = {}) {
  const html = await readFile(join(inject('siteFolder'), path, 'index.html'), 'utf8');
  const [row = ''] = /<tr data-entry=.*?<\/tr>/s.exec(html) ?? [];
  const rows = Array.from({ length: count }, (_, index) =>
    row
      .replace(/data-entry="[^"]*"/, `data-entry="model-${index}"`)
      .replace(/(<td class="number place">)\d+/, `$1${index + 1}`)
      .replace(/(\/">)[^<]*(<\/a>)/, `$1Model ${index}$2`)
      .replace(/data-value="2\.0\d*"/, `data-value="${(1 + ((index * 0.618) % 1)).toFixed(4)}"`),
  );
  const long = html.replace(/(<tbody>).*?(<\/tbody>)/s, `$1${rows.join('')}$2`);
  const opened = await openPage(browser, inject('siteAddress'), options);
  await opened.page.route(address, (route) => route.fulfill({ body: long, contentType: 'text/html' }));
  await opened.page.goto(address);
  return opened;
}

/** Names in the order in which they are seen. */
function names(page: Page): Promise<string[]> {
  return page
    .locator('.whole tbody tr[data-entry]:not([hidden]) th > a')
    .evaluateAll((links) => links.map((one) => one.textContent?.trim() ?? ''));
}

function query(page: Page): string {
  return decodeURIComponent(new URL(page.url()).search);
}

describe('sorting', () => {
  it('is worked by the heads with the keyboard, marked, announced and kept in the address', async () => {
    const { page, errors, close } = await board();
    await page.getByRole('button', { name: 'Span' }).focus();
    await page.keyboard.press('Enter');
    expect((await names(page)).slice(0, 2)).toEqual(['Ten of Everything', 'Jacquard No. 4']);
    expect(await page.locator('th[aria-sort]').getAttribute('aria-sort')).toBe('descending');
    expect(await page.locator('.board-view [role="status"]').textContent()).toBe(
      'Sorted by span, largest first. 11 of 11 aircraft shown.',
    );
    expect(await page.locator('.target-line').isVisible()).toBe(false);
    await page.keyboard.press('Space');
    expect((await names(page))[0]).toBe('Pirn');
    expect(query(page)).toBe('?sort=span');
    await page.goBack();
    expect(query(page)).toBe('?sort=-span');
    expect((await names(page))[0]).toBe('Ten of Everything');
    await page.goBack();
    expect((await names(page))[0]).toBe('Organza');
    expect(await page.locator('.target-line').isVisible()).toBe(true);
    expect(errors).toEqual([]);
    await close();
  });

  it('keeps its order when the units change', async () => {
    const { page, close } = await board('?sort=-wing-loading');
    const metric = await names(page);
    await page.locator('#units-imperial').check({ force: true });
    expect(await names(page)).toEqual(metric);
    expect(metric[0]).toBe('Ten of Everything');
    await close();
  });
});

describe('finding', () => {
  it('takes words without their marks, says how many fit, and is undone by one button', async () => {
    const { page, close } = await board();
    await page.getByLabel('Aircraft or builder').fill('lindtrad');
    expect(await names(page)).toEqual(['Warp-Weighted', 'Ten of Everything']);
    expect(await page.locator('.shown').textContent()).toBe('2 of 11');
    await expect.poll(() => query(page)).toBe('?q=lindtrad');
    await page.reload();
    expect(await names(page)).toEqual(['Warp-Weighted', 'Ten of Everything']);
    expect(await page.getByLabel('Aircraft or builder').inputValue()).toBe('lindtrad');
    await page.getByRole('button', { name: 'Show all, by place' }).click();
    expect(await names(page)).toHaveLength(11);
    expect(query(page)).toBe('');
    await close();
  });

  it('says so where nothing fits', async () => {
    const { page, close } = await board('?q=nobody');
    expect(await page.locator('.shown').textContent()).toBe('0 of 11: no aircraft fits all of that.');
    await close();
  });

  it('passes over an address that asks for what is not there', async () => {
    const { page, errors, close } = await board('?sort=colour&division=kites&builder=%00&span-from=x&of=a/b');
    expect(await names(page)).toHaveLength(11);
    expect(errors).toEqual([]);
    await close();
  });

  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 100 in are 2.54 m.
  it('takes spans in the units in force and keeps them in metres', async () => {
    const { page, close } = await board();
    await page.locator('#units-imperial').check({ force: true });
    await page.getByLabel('Span, at least').fill('100');
    await expect.poll(() => query(page)).toBe('?span-from=2.54');
    expect(await names(page)).toEqual(['Długa Nić', 'Warp-Weighted', 'Ten of Everything', 'Jacquard No. 4']);
    await page.locator('#units-metric').check({ force: true });
    await expect.poll(() => page.getByLabel('Span, at least').inputValue()).toBe('2.54');
    await close();
  });

  it('shows the places of a division where one is chosen, each with its own explanation', async () => {
    const { page, close } = await board();
    await page.locator('.board-view [name="division"]').selectOption({ label: 'Three metres and over' });
    expect(await names(page)).toEqual(['Warp-Weighted', 'Ten of Everything', 'Jacquard No. 4']);
    const rows = page.locator('.whole tbody tr[data-entry]:not([hidden])');
    expect(await rows.locator('.place').allTextContents()).toEqual(['1', '2', '3']);
    expect((await rows.locator('summary').first().textContent())?.trim()).toBe('How place 1 came about');
    await page.locator('.board-view [name="division"]').selectOption('');
    expect((await rows.locator('.place').allTextContents())[6]).toBe('7');
    await close();
  });
});

describe('ticks', () => {
  it('lead to the page that compares, with no more than four', async () => {
    const { page, close } = await board();
    for (const name of ['Organza', 'Pirn'])
      await page.getByRole('checkbox', { name: `Compare ${name}`, exact: true }).check();
    const go = page.getByRole('link', { name: 'Compare these 2' });
    expect(await go.getAttribute('href')).toMatch(
      /^\/club\/trials\/compare\/\?of=slow-thread-2026\/[a-z-]+,slow-thread-2026\/pirn$/,
    );
    for (const name of ['Shuttle', 'Tenterhook'])
      await page.getByRole('checkbox', { name: `Compare ${name}`, exact: true }).check();
    expect(await page.getByRole('checkbox', { name: 'Compare Rag Rug' }).isDisabled()).toBe(true);
    await expect.poll(() => query(page)).toMatch(/^\?of=[a-z-]+,pirn,/);
    await page.reload();
    expect(await page.getByRole('checkbox', { name: 'Compare Pirn' }).isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Clear the ticks' }).click();
    expect(await page.locator('.picks').isVisible()).toBe(false);
    await close();
  });
});

describe('without a script', () => {
  it('the whole table stands in order, explains each place and offers nothing that needs one', async () => {
    const { page, close } = await board('?sort=span&q=pirn', { javaScriptEnabled: false });
    expect(await names(page)).toHaveLength(11);
    expect(await page.locator('.board-view').isVisible()).toBe(false);
    expect(await page.locator('.pick').first().isVisible()).toBe(false);
    const why = page.locator('.whole .place-why').first();
    expect(await why.locator('p').isVisible()).toBe(false);
    await why.locator('summary').click();
    expect(await why.locator('p').isVisible()).toBe(true);
    await close();
  });
});

describe('a board of a thousand', () => {
  it('lists the first rows, then all, and sorts and searches every one of them', async () => {
    const { page, errors, close } = await longBoard(999);
    expect(await names(page)).toHaveLength(50);
    await page.getByRole('button', { name: 'Span' }).click();
    const spans = () =>
      page
        .locator('.whole tr[data-entry]:not([hidden])')
        .evaluateAll((rows) =>
          rows.map((row) => Number(row.querySelector('[data-label="Span"]')?.getAttribute('data-value'))),
        );
    const first = await spans();
    expect(first).toEqual(first.toSorted((a, b) => b - a));
    await page.getByLabel('Aircraft or builder').fill('model 99');
    // Numbers below 999 with two nines side by side: 99, 199 … 899, and 990 to 998.
    expect(await names(page)).toHaveLength(18);
    await page.getByRole('button', { name: 'Show all, by place' }).click();
    await page.getByRole('button', { name: 'List the other 950, too' }).click();
    expect(await names(page)).toHaveLength(1000);
    expect(errors).toEqual([]);
    await close();
  });
});

describe('accessibility in use', () => {
  it.for(['light', 'dark'] as const)(
    'has nothing that axe objects to, sorted and ticked, in %s',
    async (colorScheme) => {
      for (const viewport of [
        { width: 1280, height: 900 },
        { width: 320, height: 700 },
      ]) {
        const { page, close } = await board('?sort=-span&q=a&of=pirn,shuttle', { colorScheme, viewport });
        await page.locator('.whole tr:not([hidden]) .place-why summary').first().click();
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
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
          viewport.width,
        );
        await close();
      }
    },
  );
});
