import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { openPage } from './watched-page.ts';

const site = inject('siteAddress');
let browser: Browser;

beforeAll(async () => {
  browser = await chromium.connect(inject('browserEndpoint'));
});

afterAll(async () => {
  await browser.close();
});

async function opened(kept = '') {
  const options = { viewport: { width: 375, height: 740 }, hasTouch: true, isMobile: true };
  const watched = await openPage(browser, site, options);
  const { page } = watched;
  await page.goto(`${site}enter/`);
  await page.locator('.enter').waitFor();
  if (kept !== '') {
    await page.locator('#text-of-file').fill(kept);
    await page.locator('#text-of-file').blur();
  }
  return watched;
}

const field = (page: Page, ...path: (string | number)[]) =>
  page.locator(`[data-put='${JSON.stringify(path)}']`);
const text = (page: Page) => page.locator('#text-of-file').inputValue();

/** Composes a word as the keyboards of phones do: no letter of it is committed. */
async function compose(page: Page, word: string): Promise<void> {
  const keyboard = await page.context().newCDPSession(page);
  for (let letters = 1; letters <= word.length; letters += 1)
    await keyboard.send('Input.imeSetComposition', {
      text: word.slice(0, letters),
      selectionStart: letters,
      selectionEnd: letters,
    });
}

const entry = [
  '---',
  'name: Heddle',
  'builder: weaver',
  'control: free',
  'wing: { span: 1.20 m, chord: 130 mm }',
  'mass: { airframe: 78 g }',
  'motors:',
  '  - count: 1',
  'flights:',
  '  - number: 1',
  '    date: 2026-05-09',
  '    time: 38.4 s',
  '---',
  '',
].join('\n');

describe('what is being typed', () => {
  it('is in the file that is downloaded by a tap straight from the field', async () => {
    const { page, close } = await opened(entry);
    await field(page, 'name').tap();
    await field(page, 'name').fill('');
    await compose(page, 'Treadle');
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('.download').tap()]);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    expect(Buffer.concat(chunks).toString('utf8')).toBe(entry.replace('Heddle', 'Treadle'));
    await close();
  });

  it('is in the text and in its field when a part is added by a tap', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    const changed = field(page, 'flights', 0, 'changed');
    await changed.tap();
    await compose(page, 'new rubber');
    await page.locator('[data-add=\'["flights"]\']').tap();
    expect(await text(page)).toContain('changed: new rubber');
    expect(await text(page)).toContain('number: 2');
    expect(await changed.inputValue()).toBe('new rubber');
    await close();
  });

  it('is there after a reload at once, typed or composed', async () => {
    const { page, close } = await opened(entry);
    await field(page, 'name').fill('Treadle');
    await page.reload();
    await page.locator('.enter').waitFor();
    expect(await field(page, 'name').inputValue()).toBe('Treadle');
    await page.locator('#body').tap();
    await compose(page, 'Flies well');
    await page.reload();
    await page.locator('.enter').waitFor();
    expect(await page.locator('#body').inputValue()).toContain('Flies well');
    await close();
  });

  it('is taken after a pause though the word is still being composed, and goes on being composed', async () => {
    const { page, close } = await opened(entry.replace('time: 38.4 s', 'timekeepers: ote'));
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    // The empty box behind the first: once something is written in it, another appears.
    const second = field(page, 'flights', 0, 'timekeepers', 1);
    await second.tap();
    await compose(page, 'her');
    await page.waitForFunction(() =>
      document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes('[ote, her]'),
    );
    await compose(page, 'heron');
    await page.locator('.copy').tap();
    expect(await text(page)).toContain('[ote, heron]');
    expect(await second.inputValue()).toBe('heron');
    await field(page, 'flights', 0, 'timekeepers', 2).waitFor();
    await close();
  });

  it('is out of the file again where it was emptied after a pause', async () => {
    const { page, close } = await opened(entry);
    const taken = (there: boolean) =>
      page.waitForFunction(
        (is) =>
          document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes('nose: 3') === is,
        there,
      );
    await page.locator('#part-mass .more > summary').first().tap();
    await field(page, 'nose').pressSequentially('3');
    await taken(true);
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Tab');
    await taken(false);
    expect(await text(page)).toBe(entry);
    await close();
  });

  it('does not take the button from under a slow press', async () => {
    const { page, close } = await opened(entry.replace('time: 38.4 s', 'timekeepers: [ote, heron]'));
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    // What is emptied goes once the field is left, and its box with it.
    await field(page, 'flights', 0, 'timekeepers', 1).fill('');
    const add = page.locator('[data-add=\'["flights"]\']');
    await add.hover();
    await page.mouse.down();
    await page.evaluate(() => new Promise((done) => setTimeout(done, 500)));
    await page.mouse.up();
    expect(await text(page)).not.toContain('heron');
    expect(await text(page)).toContain('number: 2');
    await close();
  });

  it('stays where a tick is set, or a fold opened, straight from the field', async () => {
    const { page, close } = await opened(entry);
    await field(page, 'name').fill('Treadle');
    await field(page, 'builder', 0, 'junior').tap();
    await page.waitForFunction(() =>
      document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes('junior: true'),
    );
    expect(await text(page)).toContain('name: Treadle');
    await field(page, 'wing', 'chord').fill('140 mm');
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    await field(page, 'flights', 0, 'date').waitFor();
    expect(await text(page)).toContain('chord: 140 mm');
    await close();
  });
});
