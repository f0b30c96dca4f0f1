import type { Element, Root as Html } from 'hast';
import type { Heading, Parent, Root as Text } from 'mdast';
import rehypeSanitize, { defaultSchema, type Options as Schema } from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import { remark } from 'remark';
import remarkRehype from 'remark-rehype';
import { visit } from 'unist-util-visit';
import { readMarkdown } from './read-markdown.ts';

/**
 * What people's own text may become. Raw HTML never gets this far, so ids and names come from footnotes only and need no
 * prefix of the sanitiser's. Pictures stand under `photos`, never in a text.
 */
const schema: Schema = {
  ...defaultSchema,
  clobber: [],
  attributes: { ...defaultSchema.attributes, code: [['className', /^language-[\w+#-]+$/]] },
  tagNames: (defaultSchema.tagNames ?? []).filter((name) => !['img', 'picture', 'source'].includes(name)),
  protocols: {
    ...defaultSchema.protocols,
    href: ['http', 'https', 'mailto'],
    cite: ['http', 'https'],
  },
};

const deepestHeading = 6;

/**
 * Headings of a text begin right below those of the page it stands in and leave no level out, whether its writer began
 * with `#` or with `##`.
 */
function shiftHeadings(shift: number) {
  return () => (tree: Text) => {
    const headings: Heading[] = [];
    visit(tree, 'heading', (heading) => {
      headings.push(heading);
    });
    const levels = [...new Set(headings.map(({ depth }) => depth))].sort((a, b) => a - b);
    for (const heading of headings) {
      const level = levels.indexOf(heading.depth) + 1 + shift;
      heading.depth = Math.min(deepestHeading, level) as typeof heading.depth;
    }
  };
}

/** Puts the words of a picture in its place: nothing of the text's own folder is published but what `photos` lists. */
function picturesAsWords() {
  return (tree: Text) => {
    visit(tree, (node, index, parent: Parent | undefined) => {
      if (!('alt' in node) || parent === undefined || index === undefined) return;
      parent.children[index] = { type: 'text', value: node.alt ?? '' };
    });
  };
}

/** An address that begins with two slashes, or backslashes in their place, names another host without a protocol. */
const withoutProtocol = /^[\s\\/]*[\\/]\s*[\\/]/;

function guardAddresses() {
  return (tree: Html) => {
    visit(tree, 'element', (element) => {
      if (element.tagName === 'a') guardLink(element);
    });
  };
}

function guardLink(link: Element): void {
  const { href } = link.properties;
  if (typeof href !== 'string') return;
  if (withoutProtocol.test(href)) delete link.properties.href;
  else if (/^https?:/i.test(href)) link.properties.rel = ['nofollow', 'ugc', 'noopener'];
}

/** Two texts of one page may both have footnotes: the prefix that came with a text keeps their ids apart. */
function prefixIds() {
  return (tree: Html, { data: { idPrefix } }: { readonly data: Readonly<Record<string, unknown>> }) => {
    if (typeof idPrefix !== 'string' || idPrefix === '') return;
    visit(tree, 'element', ({ properties }) => {
      const { id, href, ariaDescribedBy } = properties;
      if (typeof id === 'string') properties.id = idPrefix + id;
      if (typeof href === 'string' && href.startsWith('#')) properties.href = `#${idPrefix}${href.slice(1)}`;
      if (Array.isArray(ariaDescribedBy))
        properties.ariaDescribedBy = ariaDescribedBy.map((other) => `${idPrefix}${other}`);
    });
  };
}

function pipeline(headingShift: number) {
  return remark()
    .use(picturesAsWords)
    .use(shiftHeadings(headingShift))
    .use(remarkRehype, { clobberPrefix: 'n-' })
    .use(rehypeSanitize, schema)
    .use(guardAddresses)
    .use(prefixIds)
    .use(rehypeStringify)
    .freeze();
}

export interface MarkdownOptions {
  /** How many levels headings are moved down; 1 where the page's own title is the only heading above. */
  readonly headingShift?: number;
}

/** Renders one text. The prefix tells its ids, those of footnotes, from the ids of other texts on the same page. */
export type Markdown = (text: string, idPrefix?: string) => string;

/**
 * Makes a renderer of people's own Markdown (CommonMark, tables, footnotes, task lists). What it gives is safe to put into
 * a page: raw HTML is dropped, links lead to http, https, mailto or stay on the site, a picture becomes its words.
 * A text that has too much in it to be read as Markdown (`markdown-limits.ts`) comes back as it was written.
 */
export function createMarkdown(options: MarkdownOptions = {}): Markdown {
  const processor = pipeline(options.headingShift ?? 1);
  return (text, idPrefix = '') => {
    if (text.trim() === '') return '';
    const { tree } = readMarkdown(text);
    if (tree === null) return asWritten(text);
    return processor.stringify(processor.runSync(tree, { data: { idPrefix } }));
  };
}

function asWritten(text: string): string {
  return `<pre>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</pre>`;
}

const belowPageTitle = createMarkdown();

/** Renders one text; who renders many with another shift keeps a renderer of `createMarkdown`. */
export function renderMarkdown(
  text: string,
  { idPrefix, ...options }: MarkdownOptions & { readonly idPrefix?: string } = {},
): string {
  const render = (options.headingShift ?? 1) === 1 ? belowPageTitle : createMarkdown(options);
  return render(text, idPrefix);
}
