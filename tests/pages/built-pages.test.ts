import rehypeParse from 'rehype-parse';
import { unified } from 'unified';
import { visit } from 'unist-util-visit';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  almanacOf,
  challenge,
  challengeRecord,
  design,
  entryRecord,
  flight,
  quantity,
} from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

/** What is shown of a page, and the names of its elements. */
function parsed(html: string): { readonly text: string; readonly elements: ReadonlySet<string> } {
  const texts: string[] = [];
  const elements = new Set<string>();
  visit(unified().use(rehypeParse).parse(html), (node) => {
    if (node.type === 'text') texts.push(node.value);
    if (node.type === 'element') elements.add(node.tagName);
  });
  return { text: texts.join(' '), elements };
}

/** Rows of the standings, the target line apart. */
function placesOn(html: string): number {
  return html.match(/<td class="number place">/g)?.length ?? 0;
}

/** The tables of a board: its filters, and the list of what happened lately, name aircraft once more. */
function tablesOf(board: string): string {
  const [tables = ''] = board.split('<section aria-labelledby="lately">');
  return tables.slice(tables.indexOf('<table'));
}

describe('a site with one challenge', () => {
  let site: BuiltPages;

  beforeAll(async () => {
    const withdrawn = entryRecord('tern', 20, {
      flights: [flight(2, 20)],
      withdrawn: { date: '2031-08-01', reason: 'sold' },
      name: 'Tern <script>alert(1)</script> & Sons',
    });
    const junior = entryRecord('wren', 19, {
      builders: [{ handle: 'small-fox', name: 'Secret Name', club: null, junior: true }],
    });
    const record = challengeRecord(
      [44, 31, 20, 19],
      [entryRecord('heron', 44), entryRecord('bittern', 31), withdrawn, junior],
    );
    site = await buildPages(
      almanacOf([record], {
        leftOut: [{ challenge: 'spring', entry: 'broken' }],
        redirects: new Map([['/entries/spring/old-name/', '/entries/spring/heron/']]),
      }),
    );
  });

  afterAll(() => site.remove());

  it('draws the target line between those who reached it and the others', async () => {
    const board = tablesOf(await site.page('challenges/spring/'));
    const order = [...board.matchAll(/Model heron|Model bittern|target 30|Tern|Model wren/g)].map(
      ([text]) => text,
    );
    expect(order).toEqual(['Model heron', 'Model bittern', 'target 30', 'Tern', 'Model wren']);
    expect(board).toContain('reached by 2');
  });

  it('prints what people wrote as text, never as markup', async () => {
    const page = await site.page('entries/spring/tern/');
    const { text, elements } = parsed(page.slice(page.indexOf('<main')));
    expect(text).toContain('Tern <script>alert(1)</script> & Sons');
    expect(text).toContain('a <thin> shim');
    expect([...elements]).not.toContain('script');
    expect([...elements]).not.toContain('thin');
    expect([...elements]).toContain('h1');
    // The one script of the head is the site's own.
    expect(page.match(/<script\s[^>]*>/g)).toEqual([`<script src="${base}assets/units.js">`]);
  });

  it('says that an entry is withdrawn', async () => {
    expect(await site.page('entries/spring/tern/')).toContain(
      'This aircraft has been withdrawn from the challenge.',
    );
  });

  it('says of an entry left out that it is being looked at, and names no fault', async () => {
    const page = await site.page('entries/spring/broken/');
    expect(page).toContain('is being looked at');
    expect(page).toContain('content="noindex"');
    expect(parsed(page).text).not.toMatch(/error|fault|wrong|invalid|mistake/i);
    expect(await site.page('left-out/')).toContain(`href="${base}entries/spring/broken/"`);
  });

  it('leads an old address on, for readers and for search engines', async () => {
    const page = await site.page('entries/spring/old-name/');
    expect(page).toContain(`content="0; url=${base}entries/spring/heron/"`);
    expect(page).toContain(`<a href="${base}entries/spring/heron/">`);
    expect(page).toContain(
      '<link rel="canonical" href="https://marsh.example/club/trials/entries/spring/heron/">',
    );
  });

  it('shows a junior by handle only and asks not to be indexed', async () => {
    const page = await site.page('entries/spring/wren/');
    expect(page).toContain('small-fox');
    expect(page).not.toContain('Secret Name');
    expect(page).toContain('<meta name="robots" content="noindex">');
    expect(await site.page('entries/spring/heron/')).not.toContain('name="robots"');
  });

  it('says why a figure is absent', async () => {
    expect(await site.page('entries/spring/heron/')).toContain('needs the tailplane’s arm');
  });

  it('marks links that people wrote', async () => {
    expect(await site.page('entries/spring/heron/')).toContain(
      '<a href="https://video.example/abc" rel="nofollow ugc noopener">',
    );
  });

  it('prints amendments with date and reason, and the cautions', async () => {
    const rules = await site.page('challenges/spring/rules/');
    expect(rules).toContain('<time datetime="2031-04-20">20 April 2031</time>');
    expect(rules).toContain('Why: Lone builders could not enter');
    expect(rules).toContain('apply to every flight of the challenge, also to earlier ones');
    expect(rules).toContain('Never leave a model wound');
  });
});

describe('a board with divisions', () => {
  const light = { id: 'light', name: 'Light ones', conditions: [] };
  const heavy = { id: 'heavy', name: 'Heavy ones', conditions: [] };
  const divided = { ...challenge, divisions: [light, heavy] };

  async function board(record: ReturnType<typeof challengeRecord>): Promise<string> {
    const site = await buildPages(almanacOf([record]));
    const page = await site.page('challenges/spring/');
    await site.remove();
    return page;
  }

  it('lists those with an aircraft and names the empty ones in one line', async () => {
    const record = challengeRecord([44.2, 31]);
    const divisions = new Map([['light', record.result.standings]]);
    const page = await board({ ...record, challenge: divided, result: { ...record.result, divisions } });
    expect(page).toContain('<h3 id="division-light">Light ones</h3>');
    expect(page).not.toContain('id="division-heavy"');
    expect(parsed(page).text).toContain('No aircraft has a counted flight yet in this division: Heavy ones.');
    expect(parsed(page).text).toContain('44.2\u00a0s');
  });

  it('says once that no flight counts', async () => {
    const record = challengeRecord([], [entryRecord('heron', 44)]);
    const page = await board({ ...record, challenge: divided, result: { ...record.result, standings: [] } });
    expect(parsed(page).text.match(/No flight counts yet\.|No aircraft has/g)).toHaveLength(1);
    expect(page).not.toContain('Heavy ones');
  });

  it('lists who waits for a ruling under the claim alone', async () => {
    const record = challengeRecord([], [entryRecord('heron', 44), entryRecord('bittern', 20)]);
    const claims = [{ entry: 'heron', score: 44, flights: [1] }];
    const unplaced = ['bittern', 'heron'].map((entry) => ({ entry, reason: 'no counted flight' }));
    const page = await board({ ...record, result: { ...record.result, standings: [], claims, unplaced } });
    expect(tablesOf(page).match(/Model heron/g)).toHaveLength(1);
    expect(tablesOf(page).match(/Model bittern/g)).toHaveLength(1);
    expect(parsed(page).text).toContain('44.0\u00a0s');
  });

  it('draws no target line among sums, and marks those who reached it', async () => {
    const record = challengeRecord([84, 51]);
    const scoring = { ...challenge.scoring, method: 'sum', flights: 2 } as const;
    const page = await board({ ...record, challenge: { ...challenge, scoring } });
    expect(page).not.toContain('target-line');
    expect(page.match(/reached the target/g)).toHaveLength(2);
  });
});

describe('an aircraft', () => {
  const many = (id: string, count: number) =>
    entryRecord(id, 44, { flights: Array.from({ length: count }, (_, index) => flight(index + 1, 44)) });
  const logo = {
    file: 'logo.png',
    alt: '',
    source: 'logo.png',
    hash: '0123456789abcdef',
    width: 256,
    height: 256,
  };
  let site: BuiltPages;

  beforeAll(async () => {
    const record = challengeRecord([44, 44], [many('two', 2), many('three', 3)]);
    const almanac = almanacOf([record], { logo });
    site = await buildPages({ ...almanac, site: { ...almanac.site, units: 'imperial' } });
  });

  afterAll(() => site.remove());

  it('folds its flights where there are more than two', async () => {
    expect((await site.page('entries/spring/two/')).match(/<details class="flight" open/g)).toHaveLength(2);
    const three = await site.page('entries/spring/three/');
    expect(three.match(/<details class="flight"/g)).toHaveLength(3);
    expect(three).not.toMatch(/<details class="flight" open/);
  });

  // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 2 m are 78.74 in.
  it('has its measures in both systems, and that of the site in force', async () => {
    const page = await site.page('entries/spring/two/');
    expect(page).toContain('data-units="imperial"');
    expect(page).toContain('<span class="imperial">78.74 ± 0.20\u00a0in</span>');
    expect(page).toMatch(/<span class="metric">2\.00\d* ± 0\.00\d+\u00a0m<\/span>/);
  });

  it('offers both systems, with that of the site chosen', async () => {
    const chosen = (await site.page('')).match(/<input[^>]*name="units"[^>]*\schecked[^>]*>/g) ?? [];
    expect(chosen).toHaveLength(1);
    expect(chosen[0]).toContain('value="imperial"');
  });

  it('stands under the logo of the club', async () => {
    const page = await site.page('entries/spring/two/');
    expect(page).toContain(`src="${base}photos/0123456789abcdef-256.jpg"`);
    expect(page).toContain('alt="Logo of Hollow Marsh Aeromodellers"');
  });
});

describe('what happened to an aircraft', () => {
  const ruling = {
    challenge: 'spring',
    entry: 'heron',
    flights: [1, 2].map((number) => ({
      flight: number,
      verdict: 'accepted' as const,
      by: 'otter',
      date: '2031-05-06',
      second: null,
      received: null,
      reason: null,
      time: null,
      seen: [],
      kept: null,
      seal: null,
      asRuled: {},
      earlier: [],
    })),
    inspections: [],
    disqualified: null,
    body: '',
  };
  let text: string;

  beforeAll(async () => {
    const heron = entryRecord('heron', 44, { flights: [flight(1, 44), flight(2, 43)] });
    const [first, second] = heron.flights;
    const later = { ...design, balance: quantity('length', 0.0925, 0.002, '92.5 mm') };
    const record = {
      ...heron,
      ruling,
      flights: [first, second].flatMap((one) => {
        if (one === undefined) return [];
        const stale = one === second ? [{ what: 'seal', ruled: 'a', now: 'b' }] : [];
        return [{ ...one, judged: { ...one.judged, stale, setup: one === second ? 'b' : null } }];
      }),
      entry: {
        ...heron.entry,
        setups: [
          heron.entry.setups[0],
          {
            id: 'b',
            from: '2031-05-04',
            change: 'Balance further aft.',
            design: later,
            overrides: ['balance'],
          },
        ] as const,
      },
      setupFigures: [heron.figures, heron.figures],
    };
    const site = await buildPages(almanacOf([challengeRecord([44], [record])]));
    text = parsed(await site.page('entries/spring/heron/')).text.replace(/\s+/g, ' ');
    await site.remove();
  });

  it('says of an acceptance that lapsed that it waits, and of no other', () => {
    expect(text.match(/waits for a new ruling/g)).toHaveLength(1);
  });

  it('keeps the value before a setup beside the one after it, and says which flights flew in each', () => {
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959): 80 mm are 3.15 in, 92.5 mm 3.64 in.
    expect(text).toMatch(
      /Balance behind the leading edge 80\.0 ± 2\.0 mm 3\.15\d? ± 0\.\d+ in 92\.5 ± 2\.0 mm 3\.64\d? ± 0\.\d+ in/,
    );
    expect(text).toContain('As first entered Flight 1.');
    expect(text).toContain('Setup b, from 4 May 2031 Flight 2.');
  });
});

describe.each([0, 1, 40, 1000])('a board of %i aircraft', (count) => {
  it('shows them all, or says that there are none', async () => {
    const times = Array.from({ length: count }, (_, index) => 60 - (index * 50) / Math.max(count, 1));
    const site = await buildPages(almanacOf([challengeRecord(times)]));
    const board = await site.page('challenges/spring/');
    expect(placesOn(board)).toBe(count);
    expect(board.includes('No aircraft has been entered yet.')).toBe(count === 0);
    expect(board).not.toMatch(/undefined|NaN|\[object/);
    await site.remove();
  });
});

describe('a site without a challenge', () => {
  it('has a front page that says so', async () => {
    const site = await buildPages(almanacOf([]));
    expect(await site.page('')).toContain('No challenge has been announced yet.');
    await site.remove();
  });
});
