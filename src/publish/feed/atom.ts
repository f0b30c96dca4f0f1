import type { CalendarDate } from '../../model/calendar.ts';
import { xmlText } from './xml-text.ts';

/** One entry of a feed. Addresses are absolute, but where a site has no address yet. */
export interface AtomEntry {
  /** An IRI that stays for ever. */
  readonly id: string;
  readonly title: string;
  readonly updated: CalendarDate;
  readonly link: string;
  readonly authors: readonly string[];
  readonly summary: string | null;
  /** Safe HTML; addresses in it are relative to `link`. */
  readonly html: string | null;
}

export interface AtomFeed {
  readonly id: string;
  readonly title: string;
  readonly author: string;
  /** Address of the feed itself, and of the page it goes with. */
  readonly self: string;
  readonly page: string;
  readonly language: string;
  /** The newest first. */
  readonly entries: readonly AtomEntry[];
}

/** Of a feed in which nothing has happened: a feed must have a date, and there is none to tell. */
const beforeAnything = '1970-01-01';

/**
 * The text of an Atom feed (RFC 4287). All dates are those of the data, at midnight UTC: the same content gives the same
 * bytes.
 */
export function atomText(feed: AtomFeed): string {
  const dates = feed.entries.map(({ updated }) => updated).sort();
  return `${[
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${xmlText(feed.language)}">`,
    ` <id>${xmlText(feed.id)}</id>`,
    ` <title>${xmlText(feed.title)}</title>`,
    ` <updated>${instant(dates.at(-1) ?? beforeAnything)}</updated>`,
    ` <author><name>${xmlText(feed.author)}</name></author>`,
    ` <link rel="self" type="application/atom+xml" href="${xmlText(feed.self)}"/>`,
    ` <link rel="alternate" type="text/html" href="${xmlText(feed.page)}"/>`,
    ...feed.entries.flatMap(linesOf),
    '</feed>',
  ].join('\n')}\n`;
}

function linesOf({ id, title, updated, link, authors, summary, html }: AtomEntry): string[] {
  return [
    ' <entry>',
    `  <id>${xmlText(id)}</id>`,
    `  <title>${xmlText(title)}</title>`,
    `  <updated>${instant(updated)}</updated>`,
    `  <link rel="alternate" type="text/html" href="${xmlText(link)}"/>`,
    ...authors.map((name) => `  <author><name>${xmlText(name)}</name></author>`),
    ...(summary === null ? [] : [`  <summary>${xmlText(summary)}</summary>`]),
    ...(html === null
      ? []
      : [`  <content type="html" xml:base="${xmlText(link)}">${xmlText(html)}</content>`]),
    ' </entry>',
  ];
}

function instant(date: CalendarDate): string {
  return `${date}T00:00:00Z`;
}
