import { describe, expect, inject, it } from 'vitest';
import { weighedKinds } from '../../scripts/speed/weighed-kinds.ts';

// The limits are the project's own; they have no source. Bytes of the heaviest page of each kind of the demo, as gzip sends them.
const heaviestScript = 15_000;
const heaviestCss = 15_000;
const heaviestHtml = 60_000;

/** Pages that are read, with nothing to work: theirs is the limit of scripts. */
const read = /^\/$|^\/(?:challenges|entries|builders|rubber|news)\/|^\/figures\/$/;

const kinds = await weighedKinds(inject('siteFolder'), '/club/trials/');

describe.for(kinds)('pages such as $kind', ({ kind, weight }) => {
  it('ask for little', () => {
    expect(weight.html).toBeLessThanOrEqual(heaviestHtml);
    expect(weight.css).toBeLessThanOrEqual(heaviestCss);
    if (read.test(kind)) expect(weight.script).toBeLessThanOrEqual(heaviestScript);
  });

  it('ask at once for the Latin letters only', () => {
    expect(weight.preloaded.length).toBeGreaterThan(0);
    expect(weight.preloaded.filter((font) => !/-latin-(?!ext)/.test(font))).toEqual([]);
  });
});

describe('the scale', () => {
  it('has weighed boards and aircraft', () => {
    expect(kinds.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['/', '/challenges/*/', '/entries/*/*/']),
    );
  });
});
