import { describe, expect, it } from 'vitest';
import { type AtomEntry, type AtomFeed, atomText } from '../../../src/publish/feed/atom.ts';
import { xmlText } from '../../../src/publish/feed/xml-text.ts';

// What a feed must have: RFC 4287, 4.1.1 and 4.1.2. Characters: XML 1.0 (fifth edition), 2.2. That a real parser reads it is
// tested in tests/browser/feed.test.ts.

const entry: AtomEntry = {
  id: 'https://club.example/feed.xml#news/2031-01-02-a',
  title: 'Wings & <strings>',
  updated: '2031-01-02',
  link: 'https://club.example/news/2031-01-02-a/',
  authors: ['M. "Thorn"'],
  summary: null,
  html: '<p>A &amp; B</p>',
};

const feed: AtomFeed = {
  id: 'https://club.example/feed.xml',
  title: 'Trials',
  author: 'Marsh Club',
  self: 'https://club.example/feed.xml',
  page: 'https://club.example/',
  language: 'en',
  entries: [entry],
};

describe('an Atom feed', () => {
  it('has id, title, date, author and the address of itself', () => {
    const [head = ''] = atomText(feed).split('<entry>');
    expect(head).toContain('<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">');
    expect(head).toContain('<id>https://club.example/feed.xml</id>');
    expect(head).toContain('<title>Trials</title>');
    expect(head).toContain('<updated>2031-01-02T00:00:00Z</updated>');
    expect(head).toContain('<author><name>Marsh Club</name></author>');
    expect(head).toContain(
      '<link rel="self" type="application/atom+xml" href="https://club.example/feed.xml"/>',
    );
  });

  it('escapes what people wrote, HTML once more', () => {
    const text = atomText(feed);
    expect(text).toContain('<title>Wings &amp; &lt;strings&gt;</title>');
    expect(text).toContain('>&lt;p&gt;A &amp;amp; B&lt;/p&gt;</content>');
  });

  it('is dated by its newest entry, in whatever order they come', () => {
    const older = { ...entry, id: `${entry.id}b`, updated: '2030-12-31' };
    const [head = ''] = atomText({ ...feed, entries: [older, entry] }).split('<entry>');
    expect(head).toContain('<updated>2031-01-02T00:00:00Z</updated>');
  });

  it('has a date also where nothing has happened', () => {
    expect(atomText({ ...feed, entries: [] })).toContain('<updated>1970-01-01T00:00:00Z</updated>');
  });
});

describe('text in XML', () => {
  it('loses characters that XML cannot hold, and keeps all others', () => {
    expect(xmlText('a\u0000b\u0008c\u001fd\uffffe\ud800f')).toBe('abcdef');
    expect(xmlText('tab\tline\nØ–😀')).toBe('tab\tline\nØ–😀');
  });
});
