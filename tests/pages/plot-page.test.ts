import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { almanacOf, challenge, challengeRecord, entryRecord, figure, figureSet } from './almanac-fixture.ts';
import { type BuiltPages, buildPages } from './build-site.ts';

describe('the page of a plot', () => {
  let site: BuiltPages;

  beforeAll(async () => {
    const heron = {
      ...entryRecord('heron', 44, { name: '<i>Heron</i> & Sons' }),
      figures: figureSet([figure('wing-loading', 'N/m2', 9.80665, 0.1), figure('best-time', 's', 44, 0.1)]),
    };
    const quiet = { ...challengeRecord([]), challenge: { ...challenge, id: 'quiet', title: 'Quiet Trial' } };
    site = await buildPages(almanacOf([challengeRecord([44], [heron]), quiet]));
  });

  afterAll(() => site.remove());

  it('may fetch from its own site, which other pages may not', async () => {
    const own = "connect-src 'self'";
    expect(await site.page('challenges/spring/plot/')).toContain(own);
    expect(await site.page('challenges/spring/')).not.toContain(own);
  });

  it('draws what it can and says where nobody has both figures', async () => {
    const html = await site.page('challenges/spring/plot/');
    expect(html.match(/<figure class="curve plot"/g)).toHaveLength(2);
    expect(html.match(/No aircraft has both figures yet\./g)).toHaveLength(2);
    expect(html).toContain('A single point shows no tendency.');
  });

  it('shows a loading in both systems', async () => {
    const html = await site.page('challenges/spring/plot/');
    expect(html).toContain('Wing loading (g/dm²)');
    expect(html).toContain('Wing loading (oz/ft²)');
  });

  it('escapes names, in the drawing too', async () => {
    const html = await site.page('challenges/spring/plot/');
    // In the head it stands in quotes, as the text of an attribute, where a bracket begins nothing.
    const body = html.slice(html.indexOf('<body'));
    expect(body).not.toContain('<i>Heron');
    expect(body).toContain('&lt;i&gt;Heron');
  });

  it('is there, and says so, where nobody has entered', async () => {
    const html = await site.page('challenges/quiet/plot/');
    expect(html).toContain('No aircraft with figures has been entered yet.');
    expect(html).not.toContain('plot-tool');
  });

  it('comes with what a browser draws it from', async () => {
    const data = JSON.parse(await site.page('assets/plot/spring.json'));
    expect(data.challenge).toEqual({ id: 'spring', title: 'Spring Trial 2031' });
    expect(data.entries[0].values).toHaveLength(data.figures.length);
  });
});
