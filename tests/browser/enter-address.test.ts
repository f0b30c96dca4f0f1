import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage } from './watched-page.ts';

// What stands in the demo's files was written by hand; where a link leads, and what is asked first, is the project's own.

const site = inject('siteAddress');
const form = `${site}enter/`;
const phone = { viewport: { width: 375, height: 667 } };
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(() => browser.close());

/** The file of an aircraft of the demo as its builder wrote it. */
const written = (entry: string) =>
  readFile(resolve(import.meta.dirname, `../../content/entries/${entry}/entry.md`), 'utf8');

const text = (page: Page) => page.locator('#text-of-file').inputValue();
const name = (page: Page) => page.locator(`[data-put='["name"]']`);

async function told(page: Page, part: string): Promise<void> {
  await page.waitForFunction(
    (wanted) => document.querySelector('.told')?.textContent?.includes(wanted),
    part,
  );
}

/** The form with an aircraft of another name in it, as the browser kept it. */
async function withDraft(page: Page): Promise<void> {
  await page.goto(form);
  await name(page).fill('Selvedge Two');
  await name(page).blur();
  await page.waitForFunction(() =>
    document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes('Selvedge Two'),
  );
}

describe('from the page of an aircraft', () => {
  it('the form opens with its file letter for letter, for its challenge and under its name', async () => {
    const { page, errors, close } = await openPage(browser, site, phone);
    await page.goto(`${site}entries/thread-fly-off-2026/sliver/`);
    await page.getByRole('link', { name: 'Add a flight or change something' }).click();
    await told(page, 'Sliver is open');
    expect(await text(page)).toBe(await written('thread-fly-off-2026/sliver'));
    expect(await page.locator('#challenge').inputValue()).toBe('thread-fly-off-2026');
    expect(await page.locator('#folder').inputValue()).toBe('sliver');
    expect(errors).toEqual([]);
    await close();
  });

  it('a flight is added in what the browser keeps from then on', async () => {
    const { page, close } = await openPage(browser, site, phone);
    await page.goto(`${form}?entry=slow-thread-2026/shuttle`);
    await told(page, 'is open');
    expect(page.url()).toBe(form);
    await page.locator('.enter-bar').getByRole('link', { name: 'Flights' }).click();
    await page.getByRole('button', { name: 'Add another flight' }).click();
    const added = await text(page);
    expect(added).not.toBe(await written('slow-thread-2026/shuttle'));
    await page.reload();
    await told(page, 'kept what you wrote');
    expect(await text(page)).toBe(added);
    await close();
  });

  it('nothing that is typed is sent: one file of this site is fetched, and nothing else is asked for', async () => {
    const { page, foreign, close } = await openPage(browser, site);
    const asked: { kind: string; method: string; url: string; body: string | null }[] = [];
    await page.goto(form);
    await page.locator('.enter').waitFor();
    page.on('request', (request) =>
      asked.push({
        kind: request.resourceType(),
        method: request.method(),
        url: request.url(),
        body: request.postData(),
      }),
    );
    await page.goto(`${form}?entry=slow-thread-2026/shuttle`);
    await told(page, 'is open');
    await name(page).fill('Unmistakable');
    await name(page).blur();
    await page.waitForFunction(() =>
      document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes('Unmistakable'),
    );
    await page.locator('.enter-side svg.drawing').waitFor();
    expect(foreign).toEqual([]);
    expect(asked.filter(({ method, body }) => method !== 'GET' || body !== null)).toEqual([]);
    expect(asked.filter(({ url }) => url.includes('Unmistakable'))).toEqual([]);
    const parts = ['image', 'script', 'stylesheet', 'font'];
    expect(asked.filter(({ kind }) => !parts.includes(kind)).map(({ url }) => url)).toEqual([
      `${form}?entry=slow-thread-2026/shuttle`,
      `${site}assets/entries/slow-thread-2026/shuttle.md`,
    ]);
    await close();
  });
});

describe('where the browser kept something else', () => {
  it('the form asks first, and keeps it', async () => {
    const { page, close } = await openPage(browser, site, phone);
    await withDraft(page);
    const kept = await text(page);
    await page.goto(`${form}?entry=slow-thread-2026/shuttle`);
    await page.getByRole('button', { name: 'Keep what is here' }).click();
    expect(await page.locator('.ask-first').isVisible()).toBe(false);
    expect(await text(page)).toBe(kept);
    expect(page.url()).toBe(form);
    await close();
  });

  it('the form opens the file where one says so, and takes that back', async () => {
    const { page, close } = await openPage(browser, site, phone);
    await withDraft(page);
    const kept = await text(page);
    await page.goto(`${form}?entry=thread-fly-off-2026/sliver`);
    await page.locator('.ask-first').waitFor();
    expect(await page.locator('.ask-first p').textContent()).toContain('Selvedge Two');
    expect(await text(page)).toBe(kept);
    await page.getByRole('button', { name: 'Open the file of this site' }).click();
    expect(await text(page)).toBe(await written('thread-fly-off-2026/sliver'));
    await page.getByRole('button', { name: 'Take that back' }).click();
    expect(await text(page)).toBe(kept);
    expect(await page.locator('#challenge').inputValue()).toBe('slow-thread-2026');
    await close();
  });

  it('the form leaves the challenge of what was begun', async () => {
    const { page, close } = await openPage(browser, site);
    await page.goto(`${form}?challenge=slow-thread-2027`);
    await page.waitForFunction(
      () => document.querySelector<HTMLSelectElement>('#challenge')?.value === 'slow-thread-2027',
    );
    await withDraft(page);
    await page.locator('#challenge').selectOption('slow-thread-2026');
    await page.goto(`${form}?challenge=slow-thread-2027`);
    await told(page, 'kept what you wrote');
    expect(await page.locator('#challenge').inputValue()).toBe('slow-thread-2026');
    await close();
  });
});

describe('an address that cannot be served', () => {
  it.for([
    ['of an aircraft that was withdrawn', 'slow-thread-2026/calico'],
    ['of a junior', 'slow-thread-2026/pirn'],
    ['of a final challenge', 'slow-thread-2025/heddle'],
  ])('is answered in a sentence, with nothing opened: $0', async ([, entry]) => {
    const { page, close } = await openPage(browser, site);
    await page.goto(`${form}?entry=${entry}`);
    await told(page, `The file of ${entry} could not be had`);
    expect(await text(page)).toBe('---\n---\n');
    await close();
  });

  it('is not heard where it names no folder', async () => {
    const { page, foreign, errors, close } = await openPage(browser, site);
    await page.goto(`${form}?entry=//elsewhere.example/a`);
    await page.locator('.enter').waitFor();
    await page.goto(`${form}?entry=../../data/slow-thread-2026&challenge=%3Cb%3E`);
    await page.locator('.enter-side .mend-count:not(:empty)').waitFor();
    expect(await text(page)).toBe('---\n---\n');
    expect([...foreign, ...errors]).toEqual([]);
    await close();
  });
});

describe('the ways in and through', () => {
  it.for(['', 'challenges/slow-thread-2026/rules/', 'challenges/slow-thread-2027/'])(
    'stand in the first screen of a phone: /%s',
    async (path) => {
      const { page, close } = await openPage(browser, site, phone);
      await page.goto(site + path);
      const box = await page
        .locator('main')
        .getByRole('link', { name: 'Enter an aircraft' })
        .first()
        .boundingBox();
      expect((box?.y ?? Number.POSITIVE_INFINITY) + (box?.height ?? 0)).toBeLessThan(667);
      await close();
    },
  );

  it('lead to every part of the form, those that are folded as well', async () => {
    const { page, close } = await openPage(browser, site, { reducedMotion: 'reduce' });
    await page.goto(form);
    await page.locator('.enter').waitFor();
    const links = page.locator('.enter > .index a');
    expect(await links.count()).toBe(13);
    for (const link of await links.all()) {
      const to = (await link.getAttribute('href')) ?? '';
      await link.click();
      expect(await page.locator(to).isVisible(), to).toBe(true);
      expect(await page.locator(to).evaluate((part) => part.getBoundingClientRect().top), to).toBeLessThan(
        720,
      );
    }
    await close();
  });

  it('make sense without scripts: the file is there to be taken, and the form says how to go on', async () => {
    const { page, close } = await openPage(browser, site, { javaScriptEnabled: false });
    await page.goto(`${site}entries/slow-thread-2026/shuttle/`);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Its file, entry.md' }).click(),
    ]);
    expect(file.suggestedFilename()).toBe('entry.md');
    await page.getByRole('link', { name: 'Add a flight or change something' }).click();
    expect(await page.locator('.without-scripts').allTextContents()).toContainEqual(
      expect.stringContaining('take its file from its page'),
    );
    await close();
  });
});
