import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ComparedAircraft } from '../../src/compare/aircraft.ts';
import { almanacOf, challengeRecord, entryRecord, figure, figureSet } from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

const plain = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

describe('the page of comparisons', () => {
  let site: BuiltPages;

  beforeAll(async () => {
    const junior = { handle: 'wren', name: 'Wilhelmina Wren', club: null, junior: true };
    const heron = entryRecord('heron', 44, { name: 'Heron of an Uncommonly Long Name & <Sons>' });
    const parts = {
      time: figure('flown-time', 's', 44, 0.1),
      use: figure('flown-use', '1', 0.5, 0.05),
      height: figure('flown-height', 'm', 22, 1),
      sink: figure('flown-sink', 'm/s', 0.25, 0.01),
    };
    const record = challengeRecord(
      [44, 30, 20],
      [
        { ...heron, timeParts: parts },
        entryRecord('bittern', 30, { builders: [junior] }),
        { ...entryRecord('plover', 20, { flights: [] }), figures: figureSet([]) },
      ],
    );
    site = await buildPages(almanacOf([record]));
  });

  afterAll(() => site.remove());

  const data = async (entry: string): Promise<ComparedAircraft> =>
    JSON.parse(await site.page(`assets/compare/spring/${entry}.json`));

  it('sets the first two of a challenge side by side, with no script', async () => {
    const text = plain(await site.page('compare/'));
    expect(text).toContain('The first two of Spring Trial 2031');
    expect(text).toContain('Heron of an Uncommonly Long Name &amp; &lt;Sons&gt;');
    expect(text).toContain(
      'The time of Model bittern cannot be taken apart: it needs a flight that can count.',
    );
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  it('names a junior by handle alone, in the page and in what it fetches', async () => {
    expect(await site.page('compare/')).not.toContain('Wilhelmina');
    expect(JSON.stringify(await data('bittern'))).not.toContain('Wilhelmina');
    expect((await data('bittern')).builders).toBe('wren');
  });

  // 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959): 22 m are 72.2 ft.
  it('carries numbers in SI and texts in both systems', async () => {
    const { flown } = await data('heron');
    expect(flown.told).toBe('44.0\u00a0s');
    expect(flown.height).toEqual({
      value: 22,
      u: 1,
      shown: { metric: '22.0 ± 1.0\u00a0m', imperial: '72.2 ± 3.3\u00a0ft' },
    });
    expect(flown.use).toMatchObject({ shown: { metric: '50.0 ± 5.0\u00a0%' } });
  });

  it('carries what is missing with its reason', async () => {
    const plover = await data('plover');
    expect(plover.shape).toBeNull();
    expect(plover.span).toBeNull();
    expect(plover.flown.time).toEqual({ absent: 'needs a flight that can count' });
    expect((await data('heron')).figures).toContainEqual({
      id: 'tail-volume',
      name: 'Tail volume',
      absent: 'needs the tailplane’s arm',
    });
  });

  it('is led to from an aircraft: with the leader, and from the leader with the next', async () => {
    expect(await site.page('entries/spring/bittern/')).toContain(
      `href="${base}compare/?of=spring/bittern,spring/heron"`,
    );
    expect(await site.page('entries/spring/heron/')).toContain(
      `href="${base}compare/?of=spring/heron,spring/bittern"`,
    );
  });
});

describe('the page of comparisons of a site with a single aircraft', () => {
  it('says that there is nothing to compare', async () => {
    const site = await buildPages(almanacOf([challengeRecord([44])]));
    const page = await site.page('compare/');
    expect(page).toContain('so there is nothing to compare yet');
    expect(page).not.toContain('<select');
    expect(await site.page('entries/spring/m1/')).toContain('Compare with another aircraft');
    await site.remove();
  });
});
