import type { Element, Root as Html } from 'hast';
import type { Root as Text } from 'mdast';
import rehypeSanitize, { defaultSchema, type Options as Schema } from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import { remark } from 'remark';
import remarkGfm from 'remark-gfm';
import remarkRehype from 'remark-rehype';
import { visit } from 'unist-util-visit';

/**
 * What people's own text may become. Raw HTML never gets this far, so ids and names come from footnotes only and need no
 * prefix of the sanitiser's. A picture's address is relative: an empty list of protocols would mean no limit, one that
 * matches nothing means none.
 */
const schema: Schema = {
  ...defaultSchema,
  clobber: [],
  attributes: { ...defaultSchema.attributes, code: [['className', /^language-[\w+#-]+$/]] },
  tagNames: (defaultSchema.tagNames ?? []).filter((name) => !['picture', 'source'].includes(name)),
  protocols: {
    ...defaultSchema.protocols,
    href: ['http', 'https', 'mailto'],
    src: ['local-only'],
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
    const depths = new Set<number>();
    visit(tree, 'heading', ({ depth }) => {
      depths.add(depth);
    });
    const levels = [...depths].sort((a, b) => a - b);
    visit(tree, 'heading', (heading) => {
      const level = levels.indexOf(heading.depth) + 1 + shift;
      heading.depth = Math.min(deepestHeading, level) as typeof heading.depth;
    });
  };
}

/** An address that begins with two slashes, or backslashes in their place, names another host without a protocol. */
const withoutProtocol = /^[\s\\/]*[\\/]\s*[\\/]/;

function guardAddresses() {
  return (tree: Html) => {
    visit(tree, 'element', (element) => {
      if (element.tagName === 'a') guardLink(element);
      if (element.tagName === 'img') guardPicture(element);
    });
  };
}

function guardLink(link: Element): void {
  const { href } = link.properties;
  if (typeof href !== 'string') return;
  if (withoutProtocol.test(href)) delete link.properties.href;
  else if (/^https?:/i.test(href)) link.properties.rel = ['nofollow', 'ugc', 'noopener'];
}

function guardPicture(picture: Element): void {
  const { src } = picture.properties;
  if (typeof src === 'string' && withoutProtocol.test(src)) delete picture.properties.src;
  picture.properties.loading = 'lazy';
}

function pipeline(headingShift: number) {
  return remark()
    .use(remarkGfm)
    .use(shiftHeadings(headingShift))
    .use(remarkRehype, { clobberPrefix: 'n-' })
    .use(rehypeSanitize, schema)
    .use(guardAddresses)
    .use(rehypeStringify)
    .freeze();
}

/** One text with footnotes stands on a page: the ids of its footnotes are the same in every text. */
export interface MarkdownOptions {
  /** How many levels headings are moved down; 1 where the page's own title is the only heading above. */
  readonly headingShift?: number;
}

/**
 * Makes a renderer of people's own Markdown (CommonMark, tables, footnotes, task lists). What it gives is safe to put into
 * a page: raw HTML is dropped, links lead to http, https, mailto or stay on the site, pictures come from the site itself.
 */
export function createMarkdown(options: MarkdownOptions = {}): (text: string) => string {
  const processor = pipeline(options.headingShift ?? 1);
  return (text) => (text.trim() === '' ? '' : String(processor.processSync(text)));
}

const belowPageTitle = createMarkdown();

/** Renders one text; who renders many with another shift keeps a renderer of `createMarkdown`. */
export function renderMarkdown(text: string, options: MarkdownOptions = {}): string {
  return (options.headingShift ?? 1) === 1 ? belowPageTitle(text) : createMarkdown(options)(text);
}
