import { createMarkdown } from '../entries/markdown.ts';

/** Renders a text that stands right below a page's title. */
export const textOfPage = createMarkdown();

/** Renders a text that stands below a heading of its own within a page. */
export const textOfSection = createMarkdown({ headingShift: 2 });
