import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, inject, it } from 'vitest';
import { addressesOfSite } from './page-types.ts';

const folder = inject('siteFolder');
const pages = [
  ...(await addressesOfSite(folder))
    .filter((address) => address.endsWith('/'))
    .map((address) => `${address.slice(1)}index.html`),
  '404.html',
];

const validator = new HtmlValidate({
  // The validator knows `details` as it once was. In the HTML standard of today it is flow content and not sectioning
  // content (4.11.1), so that a header cell may hold it (4.9.10).
  elements: ['html5', { details: { sectioning: false } }],
  extends: ['html-validate:standard', 'html-validate:a11y'],
  rules: {
    // Matters of taste that the site generator decides: how void elements and the doctype are written.
    'void-style': 'off',
    'doctype-style': 'off',
    'no-trailing-whitespace': 'off',
    // A focusable region around a wide table is what WCAG 2.2 asks for (2.1.1), and a section cannot stand in for it.
    'prefer-native-element': ['error', { exclude: ['region'] }],
  },
});

describe.for(pages)('%s', (file) => {
  it('is valid HTML', async () => {
    const report = await validator.validateString(await readFile(join(folder, file), 'utf8'));
    const faults = report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line, column }) => `${line}:${column} ${ruleId}: ${message}`),
    );
    expect(faults).toEqual([]);
  });

  it('has one h1, a language, a description and the content policy', async () => {
    const html = await readFile(join(folder, file), 'utf8');
    expect(html.match(/<h1[ >]/g)).toHaveLength(1);
    expect(html).toMatch(/<html lang="en"[ >]/);
    expect(html).toMatch(/<meta name="description" content="[^"]{10,}">/);
    expect(html).toContain("default-src 'none'");
    expect(html).not.toMatch(/<style|<script(?![^>]* src="\/club\/trials\/assets\/)|\sstyle="|\son[a-z]+="/);
  });
});

describe('the pages', () => {
  it('are all there', () => {
    expect(pages.length).toBeGreaterThan(60);
  });
});

describe('the validator', () => {
  it('objects to a paragraph that holds a division', async () => {
    const report = await validator.validateString('<p><div>no</div></p>');
    expect(report.valid).toBe(false);
  });

  it('lets a header cell hold details, and no heading', async () => {
    const cell = (held: string) =>
      `<table><tbody><tr><th scope="row">${held}</th><td>1</td></tr></tbody></table>`;
    const details = await validator.validateString(cell('<details><summary>why</summary></details>'));
    const heading = await validator.validateString(cell('<h2>no</h2>'));
    expect([details.valid, heading.valid]).toEqual([true, false]);
  });
});
