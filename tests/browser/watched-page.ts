import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

/** A page with everything that went wrong on it. */
export interface WatchedPage {
  readonly page: Page;
  /** Errors of the console (violations of the content policy are among them) and of scripts. */
  readonly errors: string[];
  /** Addresses of other hosts that the page asked for. */
  readonly foreign: string[];
  readonly close: () => Promise<void>;
}

/** Opens an empty page whose console, scripts and requests are written down. */
export async function openPage(
  browser: Browser,
  siteAddress: string,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> {
  const context = await browser.newContext({ locale: 'en-US', ...options });
  const page = await context.newPage();
  const errors: string[] = [];
  const foreign: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('requestfailed', (request) => errors.push(`failed: ${request.url()}`));
  page.on('request', (request) => {
    if (new URL(request.url()).host !== new URL(siteAddress).host) foreign.push(request.url());
  });
  return { page, errors, foreign, close: () => context.close() };
}
