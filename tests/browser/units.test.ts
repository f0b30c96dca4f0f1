import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { entryWithFlights } from './page-types.ts';
import { openPage } from './watched-page.ts';

const address = inject('siteAddress');
const entry = address + (await entryWithFlights(inject('siteFolder'), 5));
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

/** How many values are shown in metric and in imperial units. */
function shown(page: Page): Promise<number[]> {
  return page.evaluate(() =>
    ['metric', 'imperial'].map(
      (system) =>
        [...document.querySelectorAll(`main .${system}`)].filter(
          (value) => getComputedStyle(value).display !== 'none',
        ).length,
    ),
  );
}

/** Moves to the switch with the keyboard alone and takes the next choice. */
async function switchByKeyboard(page: Page): Promise<void> {
  for (let stop = 0; stop < 5; stop += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.getAttribute('name') === 'units')) break;
  }
  await page.keyboard.press('ArrowRight');
}

describe('the switch of units', () => {
  it('shows each value in one system, first that of the site', async () => {
    const { page, close } = await openPage(browser, address);
    await page.goto(entry);
    const [metric = 0, imperial] = await shown(page);
    expect(metric).toBeGreaterThan(50);
    expect(imperial).toBe(0);
    await close();
  });

  it.for([true, false])('is worked by keyboard alone, with scripts %s', async (javaScriptEnabled) => {
    const { page, close } = await openPage(browser, address, { javaScriptEnabled });
    await page.goto(entry);
    await switchByKeyboard(page);
    const [metric, imperial = 0] = await shown(page);
    expect(metric).toBe(0);
    expect(imperial).toBeGreaterThan(50);
    await close();
  });

  it('is remembered on every page, and in force before the body is there', async () => {
    const { page, close } = await openPage(browser, address);
    await page.goto(entry);
    await switchByKeyboard(page);
    await page.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (document.body === null) return;
        document.documentElement.setAttribute('data-at-body', document.documentElement.dataset.units ?? '');
        observer.disconnect();
      }).observe(document, { childList: true, subtree: true });
    });
    await page.goto(address);
    expect(await page.locator('html').getAttribute('data-at-body')).toBe('imperial');
    expect(await page.locator('#units-imperial').isChecked()).toBe(true);
    await close();
  });

  it('keeps to the choice on paper', async () => {
    const { page, close } = await openPage(browser, address);
    await page.goto(entry);
    await switchByKeyboard(page);
    await page.emulateMedia({ media: 'print' });
    expect((await shown(page))[0]).toBe(0);
    await close();
  });
});

describe('the menu on a narrow screen', () => {
  it('opens and closes by its button without a script', async () => {
    const { page, close } = await openPage(browser, address, {
      javaScriptEnabled: false,
      viewport: { width: 360, height: 740 },
    });
    await page.goto(entry);
    const way = page.locator('#menu a').first();
    expect(await way.isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Menu' }).click();
    expect(await way.isVisible()).toBe(true);
    await page.getByRole('button', { name: 'Close' }).click();
    expect(await way.isVisible()).toBe(false);
    await close();
  });

  it('is no button where there is room', async () => {
    const { page, close } = await openPage(browser, address);
    await page.goto(entry);
    expect(await page.locator('#menu a').first().isVisible()).toBe(true);
    expect(await page.getByRole('button', { name: 'Menu' }).isVisible()).toBe(false);
    await close();
  });
});
