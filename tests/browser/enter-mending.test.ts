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

/** Opens the form on a phone, with an entry in it. */
async function opened(entry: string) {
  const options = { viewport: { width: 375, height: 740 }, hasTouch: true, isMobile: true };
  const watched = await openPage(browser, site, options);
  const { page } = watched;
  await page.goto(`${site}enter/`);
  await page.locator('.enter').waitFor();
  await page.locator('#text-of-file').fill(entry);
  await page.locator('#text-of-file').blur();
  await written(page, entry);
  return watched;
}

type Path = readonly (string | number)[];

const field = (page: Page, ...path: Path) => page.locator(`[data-put='${JSON.stringify(path)}']`);
const text = (page: Page) => page.locator('#text-of-file').inputValue();
const problems = (page: Page, path: string) => page.locator(`[id='at-${path}.-problems']`).allTextContents();

async function written(page: Page, part: string): Promise<void> {
  await page.waitForFunction(
    (wanted) => document.querySelector<HTMLTextAreaElement>('#text-of-file')?.value.includes(wanted),
    part,
  );
}

async function fill(page: Page, path: Path, value: string): Promise<void> {
  await field(page, ...path).fill(value);
  await field(page, ...path).blur();
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
  '  - count: 1',
  'flights:',
  '  - number: 1',
  '    date: 2026-05-09',
  '    time: 38.4 s',
  '---',
  '',
].join('\n');

describe('lists in the form', () => {
  it('take what is typed with commas, each value in a box of its own', async () => {
    const { page, close } = await opened(entry.replace('    time: 38.4 s\n', ''));
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    await fill(page, ['flights', 0, 'watches', 0], '41,6 s, 45,6 s');
    await written(page, 'watches: ["41,6 s", "45,6 s"]');
    expect(await field(page, 'flights', 0, 'watches', 1).inputValue()).toBe('45,6 s');
    await fill(page, ['flights', 0, 'timekeepers', 0], '[otter, heron]');
    await written(page, 'timekeepers: [otter, heron]');
    await close();
  });

  it('have a box for each motor, and no other', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    const turns = page.locator(`fieldset[data-at='["flights",0,"turns"]']`);
    expect(await turns.locator('.which').allTextContents()).toEqual(['Motor 1', 'Motor 2']);
    await fill(page, ['flights', 0, 'turns', 1], '830');
    await page.waitForFunction(() =>
      document.querySelector('.told')?.textContent?.includes('in their order'),
    );
    await fill(page, ['flights', 0, 'turns', 0], '840');
    await written(page, 'turns: [840, 830]');
    expect(await turns.locator('input').count()).toBe(2);
    await close();
  });
});

describe('a part that was removed', () => {
  it('is put back by one tap, letter for letter', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    await page.getByRole('button', { name: 'Remove flight 1' }).tap();
    expect(await text(page)).not.toContain('flights');
    const back = page.locator('.removed button');
    await back.tap();
    expect(await text(page)).toBe(entry);
    expect(await page.locator('.removed').count()).toBe(0);
    await close();
  });

  it('is not offered any more once something else was changed', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    await page.getByRole('button', { name: 'Remove flight 1' }).tap();
    await fill(page, ['name'], 'Treadle');
    await written(page, 'Treadle');
    expect(await page.locator('.removed').count()).toBe(0);
    await close();
  });
});

describe('a text under a name of its own', () => {
  it('is in the file without a press of the button', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#part-built > summary').tap();
    await page.getByLabel('Name', { exact: true }).last().fill('wing');
    await page.getByLabel('What to say').fill('balsa ribs');
    await field(page, 'name').focus();
    await written(page, 'structure:\n  wing: balsa ribs');
    expect(await page.getByLabel('What to say').inputValue()).toBe('');
    await close();
  });

  it('counts as something to mend while half of it is missing, and is not lost', async () => {
    const { page, close } = await opened(entry);
    await page.locator('#part-built > summary').tap();
    await page.getByLabel('What to say').fill('balsa ribs');
    await field(page, 'name').focus();
    await page.waitForFunction(() =>
      document.querySelector('.mend-count')?.textContent?.startsWith('1 to mend'),
    );
    expect(await problems(page, 'structure.-new')).toEqual([
      'Give “balsa ribs” a name, too: only then it is in the file.',
    ]);
    await fill(page, ['name'], 'Treadle');
    await written(page, 'Treadle');
    expect(await page.getByLabel('What to say').inputValue()).toBe('balsa ribs');
    await close();
  });
});

describe('a part that was added', () => {
  it('has the cursor in its first field, and says that it is not in the file yet', async () => {
    const { page, close } = await opened(entry);
    await page.getByRole('button', { name: 'Add another motor' }).tap();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('at-motors.2.count');
    const motor = page.locator('#at-motors\\.2\\.-item');
    expect(await motor.textContent()).toContain('Not in the file yet');
    await fill(page, ['motors', 2, 'count'], '2');
    await written(page, '- count: 2');
    expect(await motor.textContent()).not.toContain('Not in the file yet');
    await close();
  });
});

describe('what is to be mended', () => {
  it('is told of a new flight once it was left, under the field that is missing', async () => {
    const { page, close } = await opened(entry);
    await page.getByRole('button', { name: 'Add another flight' }).tap();
    await fill(page, ['flights', 1, 'date'], '2026-05-16');
    await written(page, '2026-05-16');
    expect(await problems(page, 'flights.1.time')).toEqual(['']);
    await field(page, 'name').focus();
    expect(await problems(page, 'flights.1.time')).toEqual([
      'Fill in “Time” where one watch was read, or “Watches” where several were.',
    ]);
    await close();
  });

  it('marks the box that holds it, where one text stands for a list or a map', async () => {
    const { page, close } = await opened(
      entry.replace('builder: weaver', 'builder: Tansy W').replace('time: 38.4 s', 'watches: [38.4]'),
    );
    await page.locator('#at-flights\\.0\\.-item-head').tap();
    expect(await field(page, 'builder', 0, 'handle').getAttribute('aria-invalid')).toBe('true');
    expect(await field(page, 'flights', 0, 'watches', 0).getAttribute('aria-invalid')).toBe('true');
    expect((await problems(page, 'flights.0.watches.0'))[0]).toMatch(/^"38\.4" has no unit/);
    await close();
  });

  it('is mended by a tap on what is offered', async () => {
    const { page, close } = await opened(entry.replace('chord: 130 mm', 'chord: 13 cms'));
    await page.getByRole('button', { name: 'Write 13 cm' }).tap();
    expect(await text(page)).toContain('chord: 13 cm }');
    expect(await field(page, 'wing', 'chord').inputValue()).toBe('13 cm');
    await close();
  });

  it('is counted in the same words beside the fields, on folds and in the bar', async () => {
    const { page, close } = await opened(entry.replace('1.20 m', '120').replace('time: 38.4 s', 'time: 4'));
    const count = (selector: string) => page.locator(selector).first().textContent();
    expect(await count('.mend-count')).toBe('2 to mend');
    expect(await count('.bar-mend')).toBe('2 to mend: next');
    expect(await count('#at-flights\\.0\\.-item-head .to-mend')).toBe('1 to mend');
    await close();
  });
});
